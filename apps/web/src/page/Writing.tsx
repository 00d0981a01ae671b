import { useState } from 'react';
import { DesignFields } from '../advice/DesignFields.tsx';
import { easeOutcome } from '../advice/ease-outcome.ts';
import { BodySection } from '../body/BodySection.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { Asking, Reckoned } from '../reckon/reckoned.ts';
import { finished } from '../reckon/worn-measures.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { Beginning } from './Beginning.tsx';
import { Leaf } from './Leaf.tsx';
import type { LeafName } from './leaves.ts';
import { Onward } from './Onward.tsx';
import { Section } from './Section.tsx';

/** A sweater of ordinary width, for the drawing of the room while nothing is known. */
const ORDINARY_FLAT_MM = 1000;

/** What she writes: the body, a sweater that fits, the yarn, her wishes. */
export function Writing({
  open,
  notebook,
  empty,
  reckoned,
  asking,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly empty: boolean;
  readonly reckoned: Reckoned | null;
  readonly asking: Asking;
}) {
  const { tape } = notebook;
  // The offer stays where it is for this visit: nothing moves when she begins to write.
  const [offered] = useState(empty);
  const profile = reckoned?.profile ?? null;
  const sheet = reckoned?.sheet ?? null;
  const width = sheet && finished(sheet, 'chest-width');
  return (
    <>
      <Leaf name="body" open={open === 'body'}>
        {offered && <Beginning notebook={notebook} />}
        <Section id="body" title={say.body.title}>
          <BodySection shelf={notebook.bodies} tape={tape} profile={profile} asking={asking} />
        </Section>
        <Onward to="garment" />
      </Leaf>
      <Leaf name="garment" open={open === 'garment'}>
        <Section id="garment" title={say.garment.title}>
          <GarmentSection shelf={notebook.garments} tape={tape} asking={asking} />
        </Section>
        <Onward to="yarn" />
      </Leaf>
      <Leaf name="yarn" open={open === 'yarn'}>
        <Section id="yarn" title={say.yarn.title}>
          <YarnSection
            shelf={notebook.yarns}
            tape={tape}
            flatMm={width === null ? ORDINARY_FLAT_MM : width * 2}
            bodyMm={profile?.values['chest-girth']?.value ?? null}
          />
        </Section>
        <Onward to="design" />
      </Leaf>
      <Leaf name="design" open={open === 'design'}>
        <Section id="design" title={say.design.title}>
          <DesignFields
            notes={notebook.design}
            tape={tape}
            hasGarment={reckoned?.input.garment != null}
            outcome={easeOutcome(sheet?.design.ease ?? null, tape)}
          />
        </Section>
      </Leaf>
    </>
  );
}
