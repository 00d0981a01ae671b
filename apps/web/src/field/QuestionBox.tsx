import type { ValueQuestion } from '../compute/value-question.ts';
import { say } from '../messages.ts';

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
    <div className="question">
      <p>{text}</p>
      {repairs.map(({ label, to }) => (
        <button key={label} type="button" onClick={() => onRepair(to)}>
          {label}
        </button>
      ))}
      {mayBeRight && (
        <button type="button" className="quiet" onClick={onConfirm}>
          {say.body.right}
        </button>
      )}
    </div>
  );
}
