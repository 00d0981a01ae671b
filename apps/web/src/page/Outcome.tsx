import type { BodyModel } from '#body';
import { Checks } from '../advice/Checks.tsx';
import { Numbers } from '../advice/Numbers.tsx';
import { PaperHead } from '../advice/PaperHead.tsx';
import { Pieces } from '../advice/Pieces.tsx';
import { Remarks } from '../advice/Remarks.tsx';
import { KeepSection } from '../kept/KeepSection.tsx';
import { MadeSection } from '../made/MadeSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/shelf.ts';
import { toFabric } from '../reckon/to-fabric.ts';
import type { Reckoned } from '../reckon/reckoned.ts';
import { Section } from './Section.tsx';

/** What comes of what is written, and what can be done with it. */
export default function Outcome({
  notebook,
  reckoned,
  model,
}: {
  readonly notebook: Notebook;
  readonly reckoned: Reckoned | null;
  readonly model: BodyModel | null;
}) {
  const { tape } = notebook;
  const sheet = reckoned?.sheet ?? null;
  const yarnKnown = toFabric(openEntry(notebook.yarns).notes).fabric !== null;
  const cannot = reckoned?.cannot ?? null;
  return (
    <>
      <Section id="sheet" title={say.sheet.title}>
        {sheet === null ? (
          <p>{cannot === null ? say.sheet.none : say.sheet.cannot(cannot)}</p>
        ) : (
          <>
            <PaperHead sheet={sheet} bodyName={openEntry(notebook.bodies).notes.name} tape={tape} />
            {!yarnKnown && <p className="hint">{say.sheet.noYarn}</p>}
            <Checks checks={sheet.checks} tape={tape} />
            <Remarks sheet={sheet} />
            <Pieces sheet={sheet} tape={tape} />
            <Numbers sheet={sheet} tape={tape} />
          </>
        )}
      </Section>
      <Section id="made" title={say.made.title}>
        <MadeSection notebook={notebook} sheet={sheet} model={model} />
      </Section>
      <Section id="keep" title={say.keep.title}>
        <KeepSection notebook={notebook} sheet={sheet} model={model} />
      </Section>
      <Section id="send" title={say.send.title}>
        <p>{say.send.lead}</p>
      </Section>
    </>
  );
}
