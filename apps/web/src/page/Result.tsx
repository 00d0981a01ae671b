import { useEffect, useState } from 'react';
import { Headline } from '../advice/Headline.tsx';
import { OnBody } from '../advice/OnBody.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/shelf.ts';
import type { Reckoned } from '../reckon/reckoned.ts';
import { toFabric } from '../reckon/to-fabric.ts';
import { Leaf } from './Leaf.tsx';
import type { LeafName } from './leaves.ts';
import { Onward } from './Onward.tsx';
import { Section } from './Section.tsx';
import { useOutcome } from './use-outcome.ts';
import { usePrinting } from './use-printing.ts';

/** With a sheet to show, what shows it is fetched after so long, whichever leaf lies open: the browser's own Print must find it. */
const REST_MS = 4000;

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

/** What comes of what is written: her outline and the few numbers beside every leaf, the sheet in full beside her wishes. */
export function Result({
  open,
  notebook,
  reckoned,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly reckoned: Reckoned | null;
}) {
  const { tape } = notebook;
  const sheet = reckoned?.sheet ?? null;
  const body = openEntry(notebook.bodies).notes;
  const here = usePrinting() || open === 'design';
  const rested = useWhileAfter(sheet !== null);
  const outcome = useOutcome(open === 'design' || rested);
  return (
    <div className="result">
      <aside className="glance" aria-label={say.sheet.onBody.title}>
        <OnBody
          figure={body.figure}
          profile={reckoned?.profile ?? null}
          sheet={sheet}
          garment={reckoned?.input.garment ?? null}
          tape={tape}
        />
        <Headline sheet={sheet} tape={tape} />
      </aside>
      <Leaf name="design" open={here}>
        <Section id="sheet" title={say.sheet.title}>
          {sheet !== null && outcome ? (
            <outcome.Sheet
              sheet={sheet}
              tape={tape}
              bodyName={body.name}
              yarnKnown={toFabric(openEntry(notebook.yarns).notes).fabric !== null}
            />
          ) : (
            <p>{reckoned?.cannot ? say.sheet.cannot(reckoned.cannot) : say.sheet.none}</p>
          )}
        </Section>
        <Onward to="keep" />
      </Leaf>
    </div>
  );
}
