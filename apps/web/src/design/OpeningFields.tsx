import { memo } from 'react';
import { OPENING_PLACES } from '#fit';
import type { Construction } from '#garment';
import { DRAWN_CONSTRUCTIONS } from '../drawing/drawn-construction.ts';
import { Choice } from '../field/Choice.tsx';
import { LengthField } from '../field/LengthField.tsx';
import { say } from '../messages.ts';
import type { OpeningNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { writeDesign } from './write-design.ts';

const PLACES = ['unsaid', ...OPENING_PLACES] as const;

/** Where the neck opens, and how far. A raglan opens along its seams. */
export const OpeningFields = memo(function OpeningFields({
  opening: { at, length },
  construction,
  tape,
}: {
  readonly opening: OpeningNotes;
  readonly construction: Construction;
  readonly tape: Tape;
}) {
  const words = say.design.opening;
  const labels = DRAWN_CONSTRUCTIONS[construction].endsAtNeck ? { ...words, ...words.ofRaglan } : words;
  return (
    <>
      <Choice
        legend={words.legend}
        value={at ?? 'unsaid'}
        options={PLACES.map((value) => ({ value, label: labels[value] }))}
        onValue={(to) => writeDesign((it) => ({ ...it, opening: { ...it.opening, at: to === 'unsaid' ? null : to } }))}
      />
      {at !== null && at !== 'none' && (
        <LengthField
          label={words.length}
          typed={length}
          tape={tape}
          whenEmpty={words.lengthHint}
          onTyped={(to) => writeDesign((it) => ({ ...it, opening: { ...it.opening, length: to } }))}
        />
      )}
    </>
  );
});
