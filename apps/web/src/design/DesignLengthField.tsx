import { LengthField } from '../field/LengthField.tsx';
import type { DesignLength } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { writeDesign } from './write-design.ts';

/** The field for a length of the design. */
export function DesignLengthField({
  name,
  label,
  typed,
  tape,
  whenEmpty,
}: {
  readonly name: DesignLength;
  readonly label: string;
  readonly typed: Typed | undefined;
  readonly tape: Tape;
  readonly whenEmpty: string;
}) {
  return (
    <LengthField
      label={label}
      typed={typed}
      tape={tape}
      whenEmpty={whenEmpty}
      onTyped={(to) => writeDesign((it) => ({ ...it, lengths: { ...it.lengths, [name]: to } }))}
    />
  );
}
