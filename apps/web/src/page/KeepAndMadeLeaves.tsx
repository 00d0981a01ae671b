import type { BodyModel } from '#body';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Computation } from '../compute/computation.ts';
import { Leaf } from './Leaf.tsx';
import { lazyModule } from '../ui/lazy-module.ts';
import type { LeafName } from '../state/leaves.ts';
import { NextLeafLink } from './NextLeafLink.tsx';
import { Section } from './Section.tsx';
import { useSheetSections } from './use-sheet-sections.ts';
import { usePage } from '../state/page-store.ts';

const useSend = lazyModule(() => import('../send/SendSection.tsx'));

/** The leaves for a finished sheet: keeping, exporting and sending it; and the pieces once they are made. */
export function KeepAndMadeLeaves({
  open,
  notebook,
  computation,
  model,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly computation: Computation | null;
  readonly model: BodyModel | null;
}) {
  const { tape, made } = notebook;
  const sheet = computation?.sheet ?? null;
  const something = usePage((state) => state.keptSheets).sheets.length > 0 || computation !== null;
  const outcome = useSheetSections(something && (open === 'keep' || open === 'made'));
  const send = useSend(open === 'keep');
  return (
    <>
      <Leaf name="keep" open={open === 'keep'}>
        <Section id="keep" title={say.keep.title}>
          {something && outcome ? (
            <outcome.KeepSection sheet={sheet} model={model} tape={tape} />
          ) : (
            <p>{say.keep.nothing}</p>
          )}
        </Section>
        <Section id="send" title={say.send.title}>
          {send ? <send.SendSection /> : <p>{say.send.lead}</p>}
        </Section>
        <NextLeafLink to="made" />
      </Leaf>
      <Leaf name="made" open={open === 'made'}>
        <Section id="made" title={say.made.title}>
          {something && outcome ? (
            <outcome.MadeSection made={made} sheet={sheet} model={model} tape={tape} />
          ) : (
            <p>{say.made.none}</p>
          )}
        </Section>
      </Leaf>
    </>
  );
}
