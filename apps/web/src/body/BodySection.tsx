import { memo, useDeferredValue, useMemo } from 'react';
import { BODY_DIMENSIONS, type BodyDimension, type BodyProfile } from '#body';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import { openEntry, type Collection } from '../notebook/collection.ts';
import { CollectionBar } from '../collections/CollectionBar.tsx';
import type { Tape } from '../notebook/typed.ts';
import type { OpenQuestions } from '../compute/computation.ts';
import { toBody } from '../compute/to-body.ts';
import { AboutBody } from './AboutBody.tsx';
import { BodyTable } from './BodyTable.tsx';
import { MeasureRow } from './MeasureRow.tsx';
import { NextMeasure } from './NextMeasure.tsx';
import { measureGroups, seldomNeeded } from './order.ts';
import { pencilled } from '../reading/shown-value.ts';
import { ModelFigure } from './TapeDrawing.tsx';
import textStyles from '../ui/text.module.css';
import styles from './BodySection.module.css';

/** The body that the sweater is for: every measurement with a drawing of the tape, and estimates of the missing ones. */
export const BodySection = memo(function BodySection({
  collection,
  tape,
  profile,
  openQuestions,
}: {
  readonly collection: Collection<BodyNotes>;
  readonly tape: Tape;
  readonly profile: BodyProfile | null;
  readonly openQuestions: OpenQuestions;
}) {
  const words = say.body;
  const { notes } = openEntry(collection);
  const groups = useMemo(() => measureGroups(notes.figure), [notes.figure]);
  // These render in the frame after the key press: the entered text and the sheet come first.
  const said = useDeferredValue(profile);
  const ask = useDeferredValue(openQuestions);
  const questions = useMemo(() => ask.ofBody(), [ask]);
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
      question={questions[dimension] ?? null}
    />
  );
  return (
    <>
      <p className={textStyles.lead}>{words.lead}</p>
      <ModelFigure figure={notes.figure} />
      <CollectionBar kind="bodies" collection={collection} nameLabel={words.name} />
      <AboutBody
        figure={notes.figure}
        age={notes.age}
        takenBy={notes.takenBy}
        skipped={notes.skipped}
        ageLeftOut={toBody(notes).leftOut.has('age')}
      />
      <NextMeasure openQuestions={openQuestions} tape={tape} />
      {groups.map(({ title, dimensions }) => (
        <section key={title} className={styles.measures}>
          <h3>{title}</h3>
          <ul>{dimensions.map(row)}</ul>
        </section>
      ))}
      <details className={styles.measures}>
        <summary>{words.more}</summary>
        <ul>{seldomNeeded(notes.figure).map(row)}</ul>
      </details>
      <BodyTable notes={notes} profile={said} tape={tape} />
    </>
  );
});
