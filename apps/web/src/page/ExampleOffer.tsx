import { useRef } from 'react';
import { say } from '../messages.ts';
import { hasExample } from '../notebook/example-key.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { currentNotebook } from '../state/notebook.ts';
import { changeWithUndo } from '../state/undo.ts';
import styles from './ExampleOffer.module.css';

/** On a page that was empty at the start of the visit: offers to add the example; once it is there, links to its sheet. */
export function ExampleOffer({ notebook }: { readonly notebook: Notebook }) {
  const filled = hasExample(notebook);
  const box = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLParagraphElement>(null);
  const load = async (): Promise<void> => {
    const { withExample } = await import('../records/example.ts');
    if (hasExample(currentNotebook())) return;
    // The button disappears: if it still has the focus, the text above it takes that.
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
