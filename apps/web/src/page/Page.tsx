import { useState } from 'react';
import { Headline } from '../advice/Headline.tsx';
import { OnBody } from '../advice/OnBody.tsx';
import { say } from '../messages.ts';
import { isEmpty } from '../notebook/is-empty.ts';
import { openEntry } from '../notebook/shelf.ts';
import { useNotebook } from '../notebook/use-notebook.ts';
import { useReckoned } from '../reckon/use-reckoned.ts';
import { Beginning } from './Beginning.tsx';
import { Later } from './Later.tsx';
import { Top } from './Top.tsx';
import { UndoLine } from './UndoLine.tsx';
import { Writing } from './Writing.tsx';

/** The one page, from the body to the sheet; what is written is reckoned with at once. */
export function Page() {
  const notebook = useNotebook();
  const { tape } = notebook;
  const empty = isEmpty(notebook);
  // The offer stays where it is for this visit: nothing moves when she begins to write.
  const [offered] = useState(empty);
  const { reckoned, next, model } = useReckoned(notebook, !empty);
  const sheet = reckoned?.sheet ?? null;
  return (
    <>
      <a className="skip" href="#sheet">
        {say.skip}
      </a>
      <Top tape={tape} />
      <main className="page">
        <div className="writing">
          {offered && <Beginning />}
          <Writing notebook={notebook} reckoned={reckoned} next={next} />
        </div>
        <aside className="glance" aria-label={say.sheet.onBody.title}>
          <OnBody
            figure={openEntry(notebook.bodies).notes.figure}
            profile={reckoned?.profile ?? null}
            sheet={sheet}
            garment={reckoned?.input.garment ?? null}
            tape={tape}
          />
          <Headline sheet={sheet} tape={tape} />
        </aside>
        <Later notebook={notebook} reckoned={reckoned} model={model} />
      </main>
      <aside className="strip" aria-label={say.sheet.inShort}>
        <Headline sheet={sheet} tape={tape} />
      </aside>
      <UndoLine />
    </>
  );
}
