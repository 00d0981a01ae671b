import { say } from '../messages.ts';
import { bringBack, forgetUndo, useUndo } from '../notebook/use-notebook.ts';

/** What was just taken away, and the way back. It blocks nothing and does not go away by itself. */
export function UndoLine() {
  const said = useUndo();
  return (
    <section aria-label={say.undo.title}>
      <div className="undo" role="status">
        {said !== null && (
          <>
            <span>{said}</span>
            <button type="button" onClick={bringBack}>
              {say.undo.button}
            </button>
            <button type="button" className="quiet" aria-label={say.undo.close} onClick={forgetUndo}>
              ×
            </button>
          </>
        )}
      </div>
    </section>
  );
}
