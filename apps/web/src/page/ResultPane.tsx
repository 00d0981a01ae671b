import { useEffect, useState } from 'react';
import { Headline } from '../sheet/Headline.tsx';
import { OnBody } from '../sheet/OnBody.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import type { Computation } from '../compute/computation.ts';
import { toFabric } from '../compute/to-fabric.ts';
import { Leaf } from './Leaf.tsx';
import type { LeafName } from '../state/leaves.ts';
import { NextLeafLink } from './NextLeafLink.tsx';
import { Section } from './Section.tsx';
import { useSheetSections } from './use-sheet-sections.ts';
import { usePrinting } from '../state/printing.ts';
import styles from './ResultPane.module.css';

/** With a sheet to show, its components load after this time whichever leaf is open: the browser's own Print needs them. */
const REST_MS = 4000;

/** True from `REST_MS` after `begun` first became true. */
function useWhileAfter(begun: boolean): boolean {
  const [after, setAfter] = useState(false);
  useEffect(() => {
    if (!begun) return undefined;
    const timer = setTimeout(() => setAfter(true), REST_MS);
    return () => clearTimeout(timer);
  }, [begun]);
  return after;
}

/** The result: the outline and a few numbers beside every leaf, the full sheet beside the design. */
export function ResultPane({
  open,
  notebook,
  computation,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly computation: Computation | null;
}) {
  const { tape } = notebook;
  const sheet = computation?.sheet ?? null;
  const body = openEntry(notebook.bodies).notes;
  const here = usePrinting() || open === 'design';
  const rested = useWhileAfter(sheet !== null);
  const outcome = useSheetSections(open === 'design' || rested);
  return (
    <div className={styles.result}>
      <aside className={styles.glance} aria-label={say.sheet.onBody.title}>
        <OnBody
          figure={body.figure}
          profile={computation?.profile ?? null}
          sheet={sheet}
          garment={computation?.input.garments.find(({ basis }) => basis) ?? null}
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
            <p>{computation?.cannot ? say.sheet.cannot(computation.cannot) : say.sheet.none}</p>
          )}
        </Section>
        <NextLeafLink to="keep" />
      </Leaf>
    </div>
  );
}
