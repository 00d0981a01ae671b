import { say } from '../messages.ts';
import type { Typed } from '../notebook/typed.ts';

/** A question about a value, and what it would become. */
export interface Question<N extends string> {
  readonly text: string;
  readonly repairs: readonly { readonly label: string; readonly to: Readonly<Partial<Record<N, Typed>>> }[];
  /** False where it is out of all reach: then it is left out of the reckoning. */
  readonly mayBeRight: boolean;
}

/** Asks beside a value; one tap mends it, another says that it is right. */
export function Ask<N extends string>({
  question: { text, repairs, mayBeRight },
  onRepair,
  onConfirm,
}: {
  readonly question: Question<N>;
  readonly onRepair: (to: Question<N>['repairs'][number]['to']) => void;
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
