import type { NextToTake } from '#target-sheet';
import { DesignFields } from '../advice/DesignFields.tsx';
import { easeOutcome } from '../advice/ease-outcome.ts';
import { BodySection } from '../body/BodySection.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Reckoned } from '../reckon/reckoned.ts';
import { finished } from '../reckon/worn-measures.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { Section } from './Section.tsx';
import { Written } from './Written.tsx';

/** A sweater of ordinary width, for the drawing of the room while nothing is known. */
const ORDINARY_FLAT_MM = 1000;
const NONE = {};

/** What she writes: the body, a sweater that fits, the yarn, her wishes. */
export function Writing({
  notebook,
  reckoned,
  next,
}: {
  readonly notebook: Notebook;
  readonly reckoned: Reckoned | null;
  readonly next: NextToTake | null;
}) {
  const { tape } = notebook;
  const profile = reckoned?.profile ?? null;
  const sheet = reckoned?.sheet ?? null;
  const width = sheet && finished(sheet, 'chest-width');
  return (
    <>
      <Section id="body" title={say.body.title}>
        <Written>
          {' '}
          <BodySection
            shelf={notebook.bodies}
            tape={tape}
            profile={profile}
            questions={reckoned?.questions ?? NONE}
            next={next}
          />
        </Written>{' '}
      </Section>
      <Section id="garment" title={say.garment.title}>
        <Written>
          {' '}
          <GarmentSection shelf={notebook.garments} tape={tape} questions={reckoned?.garmentQuestions ?? NONE} />
        </Written>{' '}
      </Section>
      <Section id="yarn" title={say.yarn.title}>
        <Written>
          {' '}
          <YarnSection
            shelf={notebook.yarns}
            tape={tape}
            flatMm={width === null ? ORDINARY_FLAT_MM : width * 2}
            bodyMm={profile?.values['chest-girth']?.value ?? null}
          />
        </Written>{' '}
      </Section>
      <Section id="design" title={say.design.title}>
        <Written>
          {' '}
          <DesignFields
            notes={notebook.design}
            tape={tape}
            hasGarment={reckoned?.input.garment != null}
            outcome={easeOutcome(sheet?.design.ease ?? null, tape)}
          />
        </Written>{' '}
      </Section>
    </>
  );
}
