import { memo } from 'react';
import { AGES, FIGURES } from '#body';
import { Choice } from '../field/Choice.tsx';
import { NumberField } from '../field/NumberField.tsx';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import { showNumber } from '../reading/numbers.ts';
import { plainNumber } from '../reading/read.ts';
import { writeBody } from './write-body.ts';

/** Whose body it is, who measured it, and what happens to missing measurements. */
export const AboutBody = memo(function AboutBody({
  figure,
  age,
  takenBy,
  skipped,
  ageLeftOut,
}: Pick<BodyNotes, 'figure' | 'age' | 'takenBy' | 'skipped'> & { readonly ageLeftOut: boolean }) {
  const words = say.body;
  const [youngest, oldest] = AGES[figure].map((age) => showNumber(age)) as [string, string];
  const read = showNumber(plainNumber(age, 'zero too') ?? 0, 2);
  return (
    <>
      <Choice
        legend={words.figure.legend}
        value={figure}
        options={FIGURES.map((value) => ({ value, label: words.figure[value] }))}
        onValue={(to) => writeBody((it) => ({ ...it, figure: to }))}
      />
      <NumberField
        label={words.age}
        value={age}
        hint={words.ageHint}
        least="zero too"
        leftOut={ageLeftOut ? words.ageOutOfReach(read, words.whose[figure], youngest, oldest) : null}
        onValue={(to) => writeBody((it) => ({ ...it, age: to }))}
      />
      <Choice
        legend={words.takenBy.legend}
        value={takenBy}
        options={(['home', 'trained'] as const).map((value) => ({ value, label: words.takenBy[value] }))}
        onValue={(to) => writeBody((it) => ({ ...it, takenBy: to }))}
      />
      <Choice
        legend={words.skipped.legend}
        value={skipped}
        options={(['guessed', 'open'] as const).map((value) => ({ value, label: words.skipped[value] }))}
        onValue={(to) => writeBody((it) => ({ ...it, skipped: to }))}
      />
    </>
  );
});
