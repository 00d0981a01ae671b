import { useId, type ReactNode } from 'react';
import fieldStyles from './Field.module.css';
import styles from './TextField.module.css';

/** A ruled line to write on, its name above, and what was understood beneath. The line beneath keeps its place when it is empty. */
export function TextField({
  label,
  value,
  onValue,
  unit,
  below,
  keepsRoomFor,
  wrong = false,
  numeric = false,
  id,
  mark,
  describedBy,
}: {
  readonly label: string;
  readonly value: string;
  /** `replaced` where the whole text came in one stroke, over all that was there. */
  readonly onValue: (text: string, replaced: boolean) => void;
  readonly unit?: string;
  readonly below?: ReactNode;
  /** What is beneath at other times: room is kept for it, so that nothing moves when it comes or goes. */
  readonly keepsRoomFor?: ReactNode | undefined;
  readonly wrong?: boolean;
  readonly numeric?: boolean;
  readonly id?: string;
  /** A letter that finds the field in a drawing. */
  readonly mark?: string;
  /** The id of more that describes it. */
  readonly describedBy?: string;
}) {
  const own = useId();
  const field = id ?? own;
  return (
    <div className={fieldStyles.field}>
      <label htmlFor={field}>
        {mark !== undefined && <span className={styles.mark}>{mark}</span>}
        {label}
      </label>
      <span className={styles.ruled}>
        <input
          id={field}
          type="text"
          value={value}
          inputMode={numeric ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          aria-describedby={
            [below === undefined ? '' : `${field}-below`, describedBy ?? ''].join(' ').trim() || undefined
          }
          aria-invalid={wrong || undefined}
          onChange={({ target, nativeEvent }) => onValue(target.value, isWhole(nativeEvent, target.value))}
        />
        {unit !== undefined && <span className={styles.unit}>{unit}</span>}
      </span>
      {below !== undefined && (
        <div className={styles.below} id={`${field}-below`}>
          <div>{below}</div>
          {keepsRoomFor !== undefined && <div aria-hidden="true">{keepsRoomFor}</div>}
        </div>
      )}
    </div>
  );
}

/** Keyboards that compose say a word over again with each letter; of theirs it is not known. */
const isWhole = (stroke: Event, text: string): boolean =>
  stroke instanceof InputEvent && !stroke.isComposing && stroke.data === text;
