import type { ValueQuestion } from '../compute/value-question.ts';
import { say } from '../messages.ts';
import buttonStyles from '../ui/buttons.module.css';
import styles from './QuestionBox.module.css';

/** Asks about an entered value: one button for each correction, and one to confirm the value. */
export function QuestionBox<N extends string>({
  question: { text, repairs, mayBeRight },
  onRepair,
  onConfirm,
}: {
  readonly question: ValueQuestion<N>;
  readonly onRepair: (to: ValueQuestion<N>['repairs'][number]['to']) => void;
  readonly onConfirm: () => void;
}) {
  return (
    <div className={styles.question}>
      <p>{text}</p>
      {repairs.map(({ label, to }) => (
        <button key={label} type="button" onClick={() => onRepair(to)}>
          {label}
        </button>
      ))}
      {mayBeRight && (
        <button type="button" className={`${buttonStyles.quiet} ${styles.confirm}`} onClick={onConfirm}>
          {say.body.right}
        </button>
      )}
    </div>
  );
}
