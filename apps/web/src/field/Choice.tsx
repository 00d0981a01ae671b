import { useId, type ReactNode } from 'react';
import textStyles from '../ui/text.module.css';
import optionStyles from './option.module.css';
import styles from './Choice.module.css';

/** A choice of one among a few: native radio buttons, each a large target. */
export function Choice<T extends string>({
  legend,
  options,
  value,
  onValue,
  hidden = false,
}: {
  readonly legend: string;
  readonly options: readonly {
    readonly value: T;
    readonly label: string;
    readonly drawing?: ReactNode;
    readonly hint?: string;
  }[];
  readonly value: T | null;
  readonly onValue: (value: T) => void;
  /** For screen readers only, where the context shows the legend already. */
  readonly hidden?: boolean;
}) {
  const name = useId();
  return (
    <fieldset>
      <legend className={hidden ? textStyles.visuallyHidden : undefined}>{legend}</legend>
      <div className={styles.options}>
        {options.map((option) => (
          <label key={option.value} className={optionStyles.option}>
            <input type="radio" name={name} checked={option.value === value} onChange={() => onValue(option.value)} />
            {option.drawing}
            <span>{option.label}</span>
            {option.hint !== undefined && <small>{option.hint}</small>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
