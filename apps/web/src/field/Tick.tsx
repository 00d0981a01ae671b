import option from './option.module.css';
import styles from './Tick.module.css';
/** A checkbox with its label. */
export function Tick({
  label,
  value,
  onValue,
}: {
  readonly label: string;
  readonly value: boolean;
  readonly onValue: (value: boolean) => void;
}) {
  return (
    <label className={`${option.option} ${styles.tick}`}>
      <input type="checkbox" checked={value} onChange={(event) => onValue(event.target.checked)} />
      <span>{label}</span>
    </label>
  );
}
