import { memo, useDeferredValue, useMemo } from 'react';
import { BODY_DIMENSIONS, type BodyDimension, type BodyProfile } from '#body';
import type { NextToTake } from '#target-sheet';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import { openEntry, type Shelf } from '../notebook/shelf.ts';
import { ShelfBar } from '../notebook/ShelfBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import { AboutBody } from './AboutBody.tsx';
import type { Question } from './Ask.tsx';
import { BodyTable } from './BodyTable.tsx';
import { MeasureRow } from './MeasureRow.tsx';
import { NextMeasure } from './NextMeasure.tsx';
import { measureGroups, seldomNeeded } from './order.ts';
import { pencilled } from './shown-value.ts';
import { ModelFigure } from './TapeDrawing.tsx';

/** The body the sweater is for: every measure with where the tape runs; what was skipped in pencil. */
export const BodySection = memo(function BodySection({
  shelf,
  tape,
  profile,
  questions,
  next,
}: {
  readonly shelf: Shelf<BodyNotes>;
  readonly tape: Tape;
  readonly profile: BodyProfile | null;
  readonly questions: Readonly<Partial<Record<BodyDimension, Question<BodyDimension>>>>;
  readonly next: () => NextToTake | null;
}) {
  const words = say.body;
  const { notes } = openEntry(shelf);
  const groups = useMemo(() => measureGroups(notes.figure), [notes.figure]);
  // In the frame after her key: first what she wrote, and the sheet.
  const said = useDeferredValue(profile);
  const asked = useDeferredValue(questions);
  const estimates = useMemo(
    () => new Map(BODY_DIMENSIONS.map((name) => [name, pencilled(said, name, tape)])),
    [said, tape],
  );
  const row = (dimension: BodyDimension) => (
    <MeasureRow
      key={dimension}
      dimension={dimension}
      figure={notes.figure}
      written={notes.measures[dimension]}
      tape={tape}
      pencilled={estimates.get(dimension) ?? null}
      question={asked[dimension] ?? null}
    />
  );
  return (
    <>
      <p className="lead">{words.lead}</p>
      <ModelFigure figure={notes.figure} />
      <ShelfBar kind="bodies" shelf={shelf} nameLabel={words.name} />
      <AboutBody figure={notes.figure} age={notes.age} takenBy={notes.takenBy} skipped={notes.skipped} />
      <NextMeasure ask={next} tape={tape} />
      {groups.map(({ title, dimensions }) => (
        <section key={title} className="measures">
          <h3>{title}</h3>
          <ul>{dimensions.map(row)}</ul>
        </section>
      ))}
      <details className="measures">
        <summary>{words.more}</summary>
        <ul>{seldomNeeded(notes.figure).map(row)}</ul>
      </details>
      <BodyTable notes={notes} profile={said} tape={tape} />
    </>
  );
});
