import { flushSync } from 'react-dom';
import { say } from '../messages.ts';
import { undoLast, dismissUndo, undoFocus, useUndo } from '../state/notebook.ts';

/** What was just taken away, and the way back. It blocks nothing and does not go away by itself. */
export function UndoNotice() {
  const said = useUndo();
  return (
    <section aria-label={say.undo.title}>
      <div className="undo" role="status">
        {said !== null && (
          <>
            <span>{said}</span>
            <button type="button" onClick={() => closing(undoLast)}>
              {say.undo.button}
            </button>
            <button type="button" className="quiet" aria-label={say.undo.close} onClick={() => closing(dismissUndo)}>
              ×
            </button>
          </>
        )}
      </div>
    </section>
  );
}

/** The line goes away under the focus: that returns to where she was, or to the title of the open leaf where that is gone. */
function closing(how: () => void): void {
  const place = undoFocus();
  flushSync(how);
  if (place instanceof HTMLElement) place.focus({ preventScroll: true });
  if (document.activeElement !== document.body) return;
  document.querySelector<HTMLElement>('.leaf:not([hidden]) h2')?.focus({ preventScroll: true });
}
