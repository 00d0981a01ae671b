import { flushSync } from 'react-dom';
import { say } from '../messages.ts';
import { pageStore, usePage } from '../state/page-store.ts';
import { dismissUndo, undoLastChange } from '../state/undo.ts';
import buttonStyles from '../ui/buttons.module.css';
import styles from './UndoNotice.module.css';

/** What was just removed, and the button to undo it. It blocks nothing and stays until it is closed. */
export function UndoNotice() {
  const message = usePage(({ undo }) => undo?.message ?? null);
  return (
    <section aria-label={say.undo.title}>
      <div className={styles.notice} role="status">
        {message !== null && (
          <>
            <span>{message}</span>
            <button type="button" onClick={() => closing(undoLastChange)}>
              {say.undo.button}
            </button>
            <button
              type="button"
              className={buttonStyles.quiet}
              aria-label={say.undo.close}
              onClick={() => closing(dismissUndo)}
            >
              ×
            </button>
          </>
        )}
      </div>
    </section>
  );
}

/** The notice disappears with the focus in it: the focus returns to where it was, or to the title of the open leaf if that place is gone. */
function closing(change: () => void): void {
  const focus = pageStore.getState().undo?.focus;
  flushSync(change);
  if (focus instanceof HTMLElement) focus.focus({ preventScroll: true });
  if (document.activeElement !== document.body) return;
  document.getElementById(`${pageStore.getState().openLeaf}-title`)?.focus({ preventScroll: true });
}
