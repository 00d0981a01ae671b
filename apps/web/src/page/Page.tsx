import { lazy, Suspense, useMemo } from 'react';
import type { BodyProfile, Estimator } from '#body';
import type { SheetInput } from '#target-sheet';
import { Checks } from '../advice/Checks.tsx';
import { DesignFields } from '../advice/DesignFields.tsx';
import { Headline } from '../advice/Headline.tsx';
import { Numbers } from '../advice/Numbers.tsx';
import { OnBody } from '../advice/OnBody.tsx';
import { Pieces } from '../advice/Pieces.tsx';
import { Remarks } from '../advice/Remarks.tsx';
import { BodySection } from '../body/BodySection.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { useNotebook } from '../notebook/use-notebook.ts';
import { reckonProfile, reckonSheet, type Reckoned } from '../reckon/reckon.ts';
import { toSheetInput } from '../reckon/to-sheet-input.ts';
import { useEstimator } from '../reckon/use-estimator.ts';
import { finished } from '../reckon/worn-measures.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { Beginning } from './Beginning.tsx';
import { Section } from './Section.tsx';
import { Top } from './Top.tsx';
import { UndoLine } from './UndoLine.tsx';

const KeepSection = lazy(() => import('../kept/KeepSection.tsx'));
const MadeSection = lazy(() => import('../made/MadeSection.tsx'));

/** A sweater of ordinary width, for the drawing of the room while nothing is known. */
const ORDINARY_FLAT_MM = 1000;

/** The one page, from the body to the sheet; what is written is reckoned with at once. */
export function Page() {
  const notebook = useNotebook();
  const { tape } = notebook;
  const input = useMemo(() => toSheetInput(notebook, 'mm'), [notebook]);
  const estimator = useEstimator(input.body !== null);
  const profile = useMemo(() => reckonProfile(input.body, estimator), [input.body, estimator]);
  const reckoned = useMemo(() => reckonSheet(input, estimator), [input, estimator]);
  return (
    <>
      <a className="skip" href="#sheet">
        {say.skip}
      </a>
      <Top tape={tape} />
      <main className="page">
        <div className="writing">
          <Beginning notebook={notebook} />
          <Writing notebook={notebook} input={input} profile={profile} sheet={reckoned.sheet} />
        </div>
        <aside className="glance" aria-label={say.sheet.onBody.title}>
          <OnBody
            figure={input.body?.figure ?? 'woman'}
            profile={profile}
            sheet={reckoned.sheet}
            garment={input.garment}
            tape={tape}
          />
          <Headline sheet={reckoned.sheet} tape={tape} />
        </aside>
        <div className="outcome-parts">
          <Outcome notebook={notebook} reckoned={reckoned} estimator={estimator} />
        </div>
      </main>
      <div className="strip">
        <Headline sheet={reckoned.sheet} tape={tape} />
      </div>
      <UndoLine />
    </>
  );
}

/** What she writes. */
function Writing({
  notebook,
  input,
  profile,
  sheet,
}: {
  readonly notebook: Notebook;
  readonly input: SheetInput;
  readonly profile: BodyProfile | null;
  readonly sheet: Reckoned['sheet'];
}) {
  const { tape } = notebook;
  const width = sheet && finished(sheet, 'chest-width');
  return (
    <>
      <Section id="body" title={say.body.title}>
        <BodySection shelf={notebook.bodies} tape={tape} profile={profile} questions={{}} next={null} />
      </Section>
      <Section id="garment" title={say.garment.title}>
        <GarmentSection shelf={notebook.garments} tape={tape} />
      </Section>
      <Section id="yarn" title={say.yarn.title}>
        <YarnSection
          shelf={notebook.yarns}
          tape={tape}
          flatMm={width === null ? ORDINARY_FLAT_MM : width * 2}
          bodyMm={profile?.values['chest-girth']?.value ?? null}
        />
      </Section>
      <Section id="design" title={say.design.title}>
        <DesignFields
          notes={notebook.design}
          tape={tape}
          hasGarment={input.garment !== null}
          advised={sheet?.design ?? null}
        />
      </Section>
    </>
  );
}

/** What comes of it. */
function Outcome({
  notebook,
  reckoned: { sheet, cannot },
  estimator,
}: {
  readonly notebook: Notebook;
  readonly reckoned: Pick<Reckoned, 'sheet' | 'cannot'>;
  readonly estimator: Estimator | undefined;
}) {
  const { tape } = notebook;
  return (
    <>
      <Section id="sheet" title={say.sheet.title}>
        {sheet === null ? (
          <p>{cannot === null ? say.sheet.none : say.sheet.cannot(cannot)}</p>
        ) : (
          <>
            <Checks checks={sheet.checks} tape={tape} />
            <Remarks sheet={sheet} />
            <Pieces sheet={sheet} tape={tape} />
            <Numbers sheet={sheet} tape={tape} />
          </>
        )}
      </Section>
      <Suspense fallback={null}>
        <Section id="made" title={say.made.title}>
          <MadeSection notebook={notebook} sheet={sheet} estimator={estimator} />
        </Section>
        <Section id="keep" title={say.keep.title}>
          <KeepSection notebook={notebook} sheet={sheet} estimator={estimator} />
        </Section>
      </Suspense>
      <Section id="send" title={say.send.title}>
        <p>{say.send.lead}</p>
      </Section>
    </>
  );
}
