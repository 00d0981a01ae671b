import { useId, type ReactNode } from 'react';
import fieldStyles from './Field.module.css';
import styles from './TextField.module.css';

/** A text input with its label above, and a line beneath that keeps its place when it is empty. */
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
  /** `replaced` is true where one input event replaced the whole text. */
  readonly onValue: (text: string, replaced: boolean) => void;
  readonly unit?: string;
  readonly below?: ReactNode;
  /** What the line beneath shows at other times: its room is reserved, so that nothing moves when it appears. */
  readonly keepsRoomFor?: ReactNode | undefined;
  readonly wrong?: boolean;
  readonly numeric?: boolean;
  readonly id?: string;
  /** The letter of the field in a drawing. */
  readonly mark?: string;
  /** The id of another element that describes the field. */
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

/** Input methods that compose repeat the whole word at each letter, so their events say nothing. */
const isWhole = (stroke: Event, text: string): boolean =>
  stroke instanceof InputEvent && !stroke.isComposing && stroke.data === text;
