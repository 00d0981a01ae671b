import { useRef } from 'react';
import { say } from '../messages.ts';
import { hasDemo } from '../notebook/demo-key.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { notebook as written, takeAway } from '../notebook/use-notebook.ts';

/** For one who came to an empty page: offers an example, beside what she may have written meanwhile; once it is there, its sheet. */
export function Beginning({ notebook }: { readonly notebook: Notebook }) {
  const filled = hasDemo(notebook);
  const box = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLParagraphElement>(null);
  const load = async (): Promise<void> => {
    const { withDemo } = await import('../notebook/demo.ts');
    if (hasDemo(written())) return;
    // The button goes away: where it still has the focus, the words above it take that.
    if (box.current?.contains(document.activeElement)) words.current?.focus({ preventScroll: true });
    takeAway(say.demo.loaded, withDemo);
  };
  return (
    <div ref={box} className="beginning">
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
