import { memo, type ReactNode } from 'react';
import { LengthField } from '../field/LengthField.tsx';
import { NumberField } from '../field/NumberField.tsx';
import { say } from '../messages.ts';
import type { Pair, YarnNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { writeYarn } from './write-yarn.ts';
import styles from './SwatchFields.module.css';

type PairName = 'washedAcross' | 'washedAlong' | 'pulledAcross' | 'pulledAlong' | 'pulledRib';

/** What a swatch tells beyond its thickness: its growth in the wash, and its stretch. */
export const SwatchFields = memo(function SwatchFields({
  notes,
  tape,
}: {
  readonly notes: YarnNotes;
  readonly tape: Tape;
}) {
  const words = say.yarn;
  const pair = (name: PairName, label: string, before: string, after: string): ReactNode => (
    <PairFields
      legend={label}
      labels={[before, after]}
      pair={notes[name]}
      tape={tape}
      onPair={(changed) => writeYarn((it) => ({ ...it, [name]: changed }))}
    />
  );
  return (
    <>
      <details>
        <summary>{words.washing}</summary>
        <p>{words.washingLead}</p>
        {pair('washedAcross', words.across, words.before, words.after)}
        {pair('washedAlong', words.along, words.before, words.after)}
        <NumberField
          label={words.grams}
          value={notes.swatchGrams}
          unit="g"
          hint={words.gramsHint}
          onValue={(swatchGrams) => writeYarn((it) => ({ ...it, swatchGrams }))}
        />
      </details>
      <details>
        <summary>{words.pulling}</summary>
        <p>{words.pullingLead}</p>
        {pair('pulledAcross', words.across, words.rest, words.pulled)}
        {pair('pulledAlong', words.along, words.rest, words.pulled)}
        {pair('pulledRib', words.rib, words.rest, words.pulled)}
      </details>
    </>
  );
});

function PairFields({
  legend,
  labels,
  pair,
  tape,
  onPair,
}: {
  readonly legend: string;
  readonly labels: readonly [string, string];
  readonly pair: Pair;
  readonly tape: Tape;
  readonly onPair: (pair: Pair) => void;
}) {
  return (
    <fieldset className={styles.pair}>
      <legend>{legend}</legend>
      <LengthField
        label={labels[0]}
        typed={pair.before}
        tape={tape}
        onTyped={(before) => onPair({ ...pair, before })}
      />
      <LengthField label={labels[1]} typed={pair.after} tape={tape} onTyped={(after) => onPair({ ...pair, after })} />
    </fieldset>
  );
}
