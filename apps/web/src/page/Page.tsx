import { useMemo } from 'react';
import { Checks } from '../advice/Checks.tsx';
import { DesignFields } from '../advice/DesignFields.tsx';
import { Headline } from '../advice/Headline.tsx';
import { Numbers } from '../advice/Numbers.tsx';
import { OnBody } from '../advice/OnBody.tsx';
import { Pieces } from '../advice/Pieces.tsx';
import { Remarks } from '../advice/Remarks.tsx';
import { BodySection } from '../body/BodySection.tsx';
import { Choice } from '../field/Choice.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import { openEntry } from '../notebook/shelf.ts';
import { TAPES } from '../notebook/typed.ts';
import { change, useNotebook } from '../notebook/use-notebook.ts';
import { reckonProfile, reckonSheet } from '../reckon/reckon.ts';
import { toSheetInput } from '../reckon/to-sheet-input.ts';
import { finished } from '../reckon/worn-measures.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { Section } from './Section.tsx';

/** A sweater of ordinary width, for the drawing of the room while nothing is known. */
const ORDINARY_FLAT_MM = 1000;

export function Page() {
  const notebook = useNotebook();
  const { tape, design } = notebook;
  const input = useMemo(() => toSheetInput(notebook, 'mm'), [notebook]);
  const profile = useMemo(() => reckonProfile(input.body), [input.body]);
  const { sheet, cannot } = useMemo(() => reckonSheet(input), [input]);
  const chest = sheet && finished(sheet, 'chest-width');
  return (
    <>
      <a className="skip" href="#sheet">
        {say.skip}
      </a>
      <header className="top">
        <h1>{say.name}</h1>
        <p>{say.motto}</p>
        <Choice
          legend={say.tape.legend}
          value={tape}
          options={TAPES.map((value) => ({ value, label: say.tape[value] }))}
          onValue={(value) => change((it) => ({ ...it, tape: value }))}
        />
      </header>
      <main className="page">
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
            flatMm={chest === null ? ORDINARY_FLAT_MM : chest * 2}
            bodyMm={profile?.values['chest-girth']?.value ?? null}
          />
        </Section>
        <Section id="design" title={say.design.title}>
          <DesignFields
            notes={design}
            tape={tape}
            hasGarment={input.garment !== null}
            advised={sheet?.design ?? null}
          />
        </Section>
        <aside className="glance" aria-label={say.sheet.onBody.title}>
          <OnBody
            figure={input.body?.figure ?? 'woman'}
            profile={profile}
            sheet={sheet}
            garment={input.garment}
            tape={tape}
          />
          <Headline sheet={sheet} tape={tape} />
        </aside>
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
      </main>
      <div className="strip">
        <Headline sheet={sheet} tape={tape} />
      </div>
    </>
  );
}
