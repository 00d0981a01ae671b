import { useState } from 'react';
import { say } from '../messages.ts';
import { plainNumber } from '../reading/read.ts';
import { truncated } from './truncated.ts';
import { TextField } from './TextField.tsx';
import { FieldForm } from './FieldForm.tsx';
import textStyles from '../ui/text.module.css';

/** A field for a plain number (stitches, wraps, years). Without the focus, it explains beneath why an unusable text is left out. */
export function NumberField({
  label,
  value,
  onValue,
  unit,
  hint = ' ',
  least = 'above zero',
  leftOut = null,
  numeric = true,
  read = (text) => plainNumber(text, 'zero too'),
}: {
  readonly label: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
  readonly unit?: string;
  readonly hint?: string;
  readonly least?: 'above zero' | 'zero too';
  /** Why a readable number is not used. */
  readonly leftOut?: string | null;
  /** Whether the field takes digits only. */
  readonly numeric?: boolean;
  readonly read?: (text: string) => number | null;
}) {
  const [writing, setWriting] = useState(false);
  const words = say.field;
  const number = read(value);
  const why =
    value.trim() === ''
      ? null
      : number === null
        ? words.notNumber(truncated(value))
        : number === 0 && least === 'above zero'
          ? words.aboveZero
          : leftOut;
  const wrong = why !== null && !writing;
  return (
    <FieldForm onFocus={() => setWriting(true)} onBlur={() => setWriting(false)}>
      <TextField
        label={label}
        value={value}
        onValue={onValue}
        numeric={numeric}
        wrong={wrong}
        keepsRoomFor={wrong ? hint : undefined}
        below={wrong ? <span className={textStyles.wrong}>{why}</span> : hint}
        {...(unit === undefined ? {} : { unit })}
      />
    </FieldForm>
  );
}
