import { say } from '../messages.ts';
import { plainNumber } from '../reading/read.ts';
import { shortened } from './shortened.ts';
import { TextField } from './TextField.tsx';
import { Written } from './Written.tsx';

/** A plain number (stitches, wraps, years): what cannot be read is said beneath and left out of the reckoning. */
export function NumberField({
  label,
  value,
  onValue,
  unit,
  hint = ' ',
}: {
  readonly label: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
  readonly unit?: string;
  readonly hint?: string;
}) {
  const wrong = value.trim() !== '' && plainNumber(value) === null;
  return (
    <Written className="number">
      <TextField
        label={label}
        value={value}
        onValue={onValue}
        numeric
        wrong={wrong}
        keepsRoomFor={wrong ? hint : undefined}
        below={wrong ? <span className="wrong">{say.field.notNumber(shortened(value))}</span> : hint}
        {...(unit === undefined ? {} : { unit })}
      />
    </Written>
  );
}
