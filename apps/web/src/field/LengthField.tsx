import { useState, type ReactNode } from 'react';
import { say } from '../messages.ts';
import { retyped, type Tape, type Typed } from '../notebook/typed.ts';
import { showLength, showNumber, showSmall } from '../reading/numbers.ts';
import { namesUnit, read, unitOf, type Quantity } from '../reading/read.ts';
import { truncated } from './truncated.ts';
import { TextField } from './TextField.tsx';
import { FieldForm } from './FieldForm.tsx';
import textStyles from '../ui/text.module.css';

const other = (tape: Tape): Tape => (tape === 'cm' ? 'in' : 'cm');
const POUND_GRAMS = 453.59237;

/** The value in the other unit, so that both are always visible. */
function onOtherTape(value: number, quantity: Quantity, tape: Tape): string {
  if (quantity === 'mass')
    return tape === 'cm' ? `${showNumber(value / POUND_GRAMS)} lb` : `${showNumber(value / 1000, 1)} kg`;
  return quantity === 'small' ? showSmall(value, other(tape)) : showLength(value, other(tape));
}

/** A field for a length, thickness, difference or weight: the text stays as it was entered, and the line beneath shows how it was read. */
export function LengthField({
  label,
  typed,
  tape,
  onTyped,
  quantity = 'length',
  whenEmpty,
  id,
  mark,
  ask,
  leftOut,
  whyElsewhere = false,
  describedBy,
}: {
  readonly label: string;
  readonly typed: Typed | undefined;
  readonly tape: Tape;
  readonly onTyped: (typed: Typed) => void;
  readonly quantity?: Quantity;
  /** Shown beneath an empty field: an estimate, or the value that is used instead. */
  readonly whenEmpty?: ReactNode;
  readonly id?: string;
  readonly mark?: string;
  /** A question about the value, shown instead of how it was read. */
  readonly ask?: ReactNode;
  /** Why a readable value is not used; shown when the field does not have the focus. */
  readonly leftOut?: string | undefined;
  /** The element with the id `describedBy` explains in full why a text cannot be read. */
  readonly whyElsewhere?: boolean;
  readonly describedBy?: string;
}) {
  const [writing, setWriting] = useState(false);
  const reading = read(typed, quantity);
  const unit = unitOf(quantity, reading.is === 'empty' ? tape : (typed?.tape ?? tape));
  const out = reading.is === 'value' && !writing && leftOut !== undefined;
  const below =
    reading.is === 'empty' ? (
      (whenEmpty ?? ' ')
    ) : out ? (
      <span className={textStyles.wrong}>{leftOut}</span>
    ) : reading.is === 'value' ? (
      (ask ?? say.field.equals(onOtherTape(reading.value, quantity, reading.tape)))
    ) : writing ? (
      say.field.notYet
    ) : (
      <span className={textStyles.wrong}>
        {whyElsewhere ? say.field.cannotRead : say.field.wrong[reading.problem](truncated(typed?.text ?? ''))}
      </span>
    );
  return (
    <FieldForm onFocus={() => setWriting(true)} onBlur={() => setWriting(false)}>
      <TextField
        label={label}
        value={typed?.text ?? ''}
        onValue={(text, replaced) => onTyped(retyped(typed, text, tape, replaced))}
        unit={namesUnit(typed?.text ?? '') ? '' : unit}
        below={below}
        keepsRoomFor={reading.is === 'empty' ? undefined : whenEmpty}
        wrong={out || (reading.is === 'wrong' && !writing)}
        numeric={unit !== 'in'}
        {...(id === undefined ? {} : { id })}
        {...(mark === undefined ? {} : { mark })}
        {...(describedBy === undefined ? {} : { describedBy })}
      />
    </FieldForm>
  );
}
