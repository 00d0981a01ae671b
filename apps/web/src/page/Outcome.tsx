import { memo } from 'react';
import type { BodyModel } from '#body';
import type { TargetSheet } from '#target-sheet';
import { Checks } from '../advice/Checks.tsx';
import { Numbers } from '../advice/Numbers.tsx';
import { PaperHead } from '../advice/PaperHead.tsx';
import { Pieces } from '../advice/Pieces.tsx';
import { Remarks } from '../advice/Remarks.tsx';
import { KeepSection } from '../kept/KeepSection.tsx';
import { MadeSection } from '../made/MadeSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { Section } from './Section.tsx';

/** What comes of what is written, and what can be done with it. */
export const Outcome = memo(function Outcome({
  sheet,
  cannot,
  model,
  tape,
  made,
  bodyName,
  yarnKnown,
}: {
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
  readonly model: BodyModel | null;
  readonly tape: Tape;
  readonly made: Notebook['made'];
  readonly bodyName: string;
  readonly yarnKnown: boolean;
}) {
  return (
    <>
      <Section id="sheet" title={say.sheet.title}>
        {sheet === null ? (
          <p>{cannot === null ? say.sheet.none : say.sheet.cannot(cannot)}</p>
        ) : (
          <>
            <PaperHead sheet={sheet} bodyName={bodyName} tape={tape} />
            {!yarnKnown && <p className="hint">{say.sheet.noYarn}</p>}
            <Checks checks={sheet.checks} tape={tape} />
            <Remarks sheet={sheet} />
            <Pieces sheet={sheet} tape={tape} />
            <Numbers sheet={sheet} tape={tape} />
          </>
        )}
      </Section>
      <Section id="made" title={say.made.title}>
        <MadeSection made={made} sheet={sheet} model={model} tape={tape} />
      </Section>
      <Section id="keep" title={say.keep.title}>
        <KeepSection sheet={sheet} model={model} tape={tape} />
      </Section>
    </>
  );
});
