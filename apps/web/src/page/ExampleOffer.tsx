import { useRef } from 'react';
import { say } from '../messages.ts';
import { hasExample } from '../notebook/example-key.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { currentNotebook } from '../state/notebook.ts';
import { changeWithUndo } from '../state/undo.ts';
import styles from './ExampleOffer.module.css';

/** For one who came to an empty page: offers an example, beside what she may have written meanwhile; once it is there, its sheet. */
export function ExampleOffer({ notebook }: { readonly notebook: Notebook }) {
  const filled = hasExample(notebook);
  const box = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLParagraphElement>(null);
  const load = async (): Promise<void> => {
    const { withExample } = await import('../records/example.ts');
    if (hasExample(currentNotebook())) return;
    // The button goes away: where it still has the focus, the words above it take that.
    if (box.current?.contains(document.activeElement)) words.current?.focus({ preventScroll: true });
    changeWithUndo(say.demo.loaded, withExample);
  };
  return (
    <div ref={box} className={styles.offer}>
      <p ref={words} tabIndex={-1}>
        {filled ? say.demo.filled : say.demo.text}
      </p>
      {filled ? (
        <a href="#sheet">{say.demo.look}</a>
      ) : (
        <button type="button" onClick={() => void load()}>
          {say.demo.load}
        </button>
      )}
    </div>
  );
}
