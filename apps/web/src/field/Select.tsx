import { useId } from 'react';
import styles from './Field.module.css';

/** A choice of one among many, as the browser's own list. The empty value is its first line, "not said". */
export function Select<T extends string>({
  label,
  options,
  value,
  onValue,
}: {
  readonly label: string;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly value: T;
  readonly onValue: (value: T) => void;
}) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.target.value as T)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
