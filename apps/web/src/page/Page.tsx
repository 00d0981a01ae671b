import { Headline } from '../advice/Headline.tsx';
import { say } from '../messages.ts';
import { isEmpty } from '../notebook/is-empty.ts';
import { useNotebook } from '../notebook/use-notebook.ts';
import { useReckoned } from '../reckon/use-reckoned.ts';
import { After } from './After.tsx';
import { Contents } from './Contents.tsx';
import { Result } from './Result.tsx';
import { Top } from './Top.tsx';
import { UndoLine } from './UndoLine.tsx';
import { useLeaf } from './use-leaf.ts';
import { Writing } from './Writing.tsx';

/** The notebook, one leaf open, from the body to the pieces made; what is written is reckoned with at once. */
export function Page() {
  const notebook = useNotebook();
  const open = useLeaf();
  const { tape } = notebook;
  const empty = isEmpty(notebook);
  const { reckoned, asking, model } = useReckoned(notebook, !empty);
  return (
    <>
      <a className="skip" href="#sheet">
        {say.skip}
      </a>
      <Top tape={tape} />
      <Contents open={open} />
      <main className="page" data-leaf={open}>
        <Writing open={open} notebook={notebook} empty={empty} reckoned={reckoned} asking={asking} />
        <Result open={open} notebook={notebook} reckoned={reckoned} />
        <After open={open} notebook={notebook} reckoned={reckoned} model={model} />
      </main>
      <aside className="strip" aria-label={say.sheet.inShort}>
        <Headline sheet={reckoned?.sheet ?? null} tape={tape} />
      </aside>
      <UndoLine />
    </>
  );
}
