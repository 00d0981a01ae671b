import type { BodyModel } from '#body';
import { useKeptSheets } from '../kept/use-kept-sheets.ts';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Reckoned } from '../reckon/reckoned.ts';
import { Leaf } from './Leaf.tsx';
import { lazyModule } from './lazy-module.ts';
import type { LeafName } from './leaves.ts';
import { Onward } from './Onward.tsx';
import { Section } from './Section.tsx';
import { useOutcome } from './use-outcome.ts';

const useSend = lazyModule(() => import('../send/SendSection.tsx'));

/** What is done with a sheet: kept, taken along, sent on; and the pieces once they are made. */
export function After({
  open,
  notebook,
  reckoned,
  model,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly reckoned: Reckoned | null;
  readonly model: BodyModel | null;
}) {
  const { tape, made } = notebook;
  const sheet = reckoned?.sheet ?? null;
  const something = useKeptSheets().sheets.length > 0 || reckoned !== null;
  const outcome = useOutcome(something && (open === 'keep' || open === 'made'));
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
        <Onward to="made" />
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
