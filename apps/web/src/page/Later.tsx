import { useEffect, useRef, useState } from 'react';
import type { BodyModel } from '#body';
import { useKeptSheets } from '../kept/use-kept-sheets.ts';
import { say } from '../messages.ts';
import { openEntry } from '../notebook/shelf.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { toFabric } from '../reckon/to-fabric.ts';
import type { Reckoned } from '../reckon/reckoned.ts';
import { Section } from './Section.tsx';
import { lazyModule } from './lazy-module.ts';
import { useLater } from './use-later.ts';
import { useNear } from './use-near.ts';
import { useOnScreen } from './use-on-screen.ts';

/** Not React's own `lazy`: a part that cannot be fetched without a connection must not take the page down with it. */
const useOutcome = lazyModule(() => import('./Outcome.tsx'));
const useSend = lazyModule(() => import('../send/SendSection.tsx'));

/** With a sheet to show, the rest is fetched after so long even far from the screen: the browser's own Print must find it. */
const REST_MS = 4000;

/** While it is not on the screen it is drawn anew once she has paused so long. */
const PAUSE_MS = 400;

/** True a while after something began, and from then on. */
function useWhileAfter(begun: boolean): boolean {
  const [after, setAfter] = useState(false);
  useEffect(() => {
    if (!begun) return undefined;
    const timer = setTimeout(() => setAfter(true), REST_MS);
    return () => clearTimeout(timer);
  }, [begun]);
  return after;
}

/** The second half of the page. It is fetched when she comes near it and there is something to show, and drawn after what she writes. */
export function Later({
  notebook,
  reckoned,
  model,
}: {
  readonly notebook: Notebook;
  readonly reckoned: Reckoned | null;
  readonly model: BodyModel | null;
}) {
  const place = useRef<HTMLDivElement>(null);
  const near = useNear(place);
  const kept = useKeptSheets().sheets.length > 0;
  const onScreen = useOnScreen(place);
  const sheet = useLater(reckoned?.sheet ?? null, onScreen ? 0 : PAUSE_MS);
  const rested = useWhileAfter(sheet !== null);
  const shown = (near || rested) && (reckoned !== null || kept);
  const outcome = useOutcome(shown);
  const send = useSend(near);
  return (
    <div className="outcome-parts" ref={place}>
      {shown && outcome ? (
        <outcome.Outcome
          sheet={sheet}
          cannot={reckoned?.cannot ?? null}
          model={model}
          tape={notebook.tape}
          made={notebook.made}
          bodyName={openEntry(notebook.bodies).notes.name}
          yarnKnown={toFabric(openEntry(notebook.yarns).notes).fabric !== null}
        />
      ) : (
        <Nothing />
      )}
      <Section id="send" title={say.send.title}>
        {send ? <send.SendSection /> : <p>{say.send.lead}</p>}
      </Section>
    </div>
  );
}

/** The same parts while there is no sheet. */
function Nothing() {
  return (
    <>
      <Section id="sheet" title={say.sheet.title}>
        <p>{say.sheet.none}</p>
      </Section>
      <Section id="made" title={say.made.title}>
        <p>{say.made.none}</p>
      </Section>
      <Section id="keep" title={say.keep.title}>
        <p>{say.keep.nothing}</p>
      </Section>
    </>
  );
}
