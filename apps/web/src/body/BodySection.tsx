import { memo, useMemo } from 'react';
import { FIGURES, type BodyDimension, type BodyProfile } from '#body';
import { Choice } from '../field/Choice.tsx';
import { NumberField } from '../field/NumberField.tsx';
import { say } from '../messages.ts';
import { onShelf } from '../notebook/kinds.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import { openEntry, withNotes, type Shelf } from '../notebook/shelf.ts';
import { ShelfBar } from '../notebook/ShelfBar.tsx';
import type { Tape, Typed } from '../notebook/typed.ts';
import { change } from '../notebook/use-notebook.ts';
import type { Next } from '../reckon/next.ts';
import { BodyTable } from './BodyTable.tsx';
import type { Question } from './Ask.tsx';
import { MeasureRow } from './MeasureRow.tsx';
import { measureGroups, seldomNeeded } from './order.ts';
import { NextMeasure } from './NextMeasure.tsx';
import { pencilled } from './shown-value.ts';
import { ModelFigure } from './TapeDrawing.tsx';

const write = (how: (notes: BodyNotes) => BodyNotes): void =>
  change((notebook) => onShelf(notebook, 'bodies', (shelf) => withNotes(shelf, how)));

const today = (): string => new Date().toLocaleDateString('sv');

const writeMeasure = (dimension: BodyDimension, typed: Typed): void =>
  write((it) => {
    const { [dimension]: before, ...rest } = it.measures;
    if (typed.text === '') return { ...it, measures: rest };
    return { ...it, measures: { ...rest, [dimension]: { ...before, ...typed, on: today() } } };
  });

const repair = (to: Question<BodyDimension>['repairs'][number]['to']): void => {
  for (const [dimension, typed] of Object.entries(to)) writeMeasure(dimension as BodyDimension, typed);
};

const confirm = (dimension: BodyDimension): void =>
  write((it) => {
    const measure = it.measures[dimension];
    if (measure === undefined) return it;
    return { ...it, measures: { ...it.measures, [dimension]: { ...measure, confirmed: measure.text } } };
  });

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
  readonly next: Next | null;
}) {
  const words = say.body;
  const { notes } = openEntry(shelf);
  const groups = useMemo(() => measureGroups(notes.figure), [notes.figure]);
  const row = (dimension: BodyDimension) => (
    <MeasureRow
      key={dimension}
      dimension={dimension}
      figure={notes.figure}
      written={notes.measures[dimension]}
      tape={tape}
      pencilled={pencilled(profile, dimension, tape)}
      question={questions[dimension] ?? null}
      onTyped={writeMeasure}
      onRepair={repair}
      onConfirm={confirm}
    />
  );
  return (
    <>
      <p className="lead">{words.lead}</p>
      <ModelFigure figure={notes.figure} />
      <ShelfBar kind="bodies" shelf={shelf} nameLabel={words.name} />
      <Choice
        legend={words.figure.legend}
        value={notes.figure}
        options={FIGURES.map((value) => ({ value, label: words.figure[value] }))}
        onValue={(figure) => write((it) => ({ ...it, figure }))}
      />
      <NumberField
        label={words.age}
        value={notes.age}
        hint={words.ageHint}
        onValue={(age) => write((it) => ({ ...it, age }))}
      />
      <Choice
        legend={words.takenBy.legend}
        value={notes.takenBy}
        options={(['home', 'trained'] as const).map((value) => ({ value, label: words.takenBy[value] }))}
        onValue={(takenBy) => write((it) => ({ ...it, takenBy }))}
      />
      <NextMeasure next={next} tape={tape} />
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
      <BodyTable notes={notes} profile={profile} tape={tape} />
    </>
  );
});
