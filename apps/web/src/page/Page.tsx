import { useMemo } from 'react';
import { resolveBody } from '#body';
import { BodySection } from '../body/BodySection.tsx';
import { Choice } from '../field/Choice.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import { openEntry } from '../notebook/shelf.ts';
import { TAPES } from '../notebook/typed.ts';
import { change, useNotebook } from '../notebook/use-notebook.ts';
import { toBody } from '../reckon/to-body.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { Section } from './Section.tsx';

export function Page() {
  const notebook = useNotebook();
  const { tape } = notebook;
  const notes = openEntry(notebook.bodies).notes;
  const profile = useMemo(() => {
    const { body } = toBody(notes);
    return body.measures.length === 0 ? null : resolveBody(body, { estimate: true });
  }, [notes]);
  return (
    <>
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
      <main>
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
            flatMm={1000}
            bodyMm={profile?.values['chest-girth']?.value ?? null}
          />
        </Section>
      </main>
    </>
  );
}
