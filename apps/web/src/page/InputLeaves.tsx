import { useState } from 'react';
import { DesignFields } from '../design/DesignFields.tsx';
import { easeOutcome } from '../design/ease-outcome.ts';
import { BodySection } from '../body/BodySection.tsx';
import { GarmentSection } from '../garment/GarmentSection.tsx';
import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import type { OpenQuestions, Computation } from '../compute/computation.ts';
import { finishedDimension } from '../compute/finished-dimension.ts';
import { YarnSection } from '../yarn/YarnSection.tsx';
import { ExampleOffer } from './ExampleOffer.tsx';
import { Leaf } from './Leaf.tsx';
import type { LeafName } from '../state/leaves.ts';
import { NextLeafLink } from './NextLeafLink.tsx';
import { Section } from './Section.tsx';

/** The width that the drawing of the yarn's room shows while there is no sheet. */
const ORDINARY_FLAT_MM = 1000;

/** The leaves to fill in: the body, a sweater that fits, the yarn, the design. */
export function InputLeaves({
  open,
  notebook,
  empty,
  computation,
  openQuestions,
}: {
  readonly open: LeafName;
  readonly notebook: Notebook;
  readonly empty: boolean;
  readonly computation: Computation | null;
  readonly openQuestions: OpenQuestions;
}) {
  const { tape } = notebook;
  // The offer stays for the whole visit, so that nothing moves at the first key press.
  const [offered] = useState(empty);
  const profile = computation?.profile ?? null;
  const sheet = computation?.sheet ?? null;
  const garment = computation?.input.garments.find(({ basis }) => basis);
  const width = sheet && finishedDimension(sheet, 'chest-width');
  return (
    <>
      <Leaf name="body" open={open === 'body'}>
        {offered && <ExampleOffer notebook={notebook} />}
        <Section id="body" title={say.body.title}>
          <BodySection collection={notebook.bodies} tape={tape} profile={profile} openQuestions={openQuestions} />
        </Section>
        <NextLeafLink to="garment" />
      </Leaf>
      <Leaf name="garment" open={open === 'garment'}>
        <Section id="garment" title={say.garment.title}>
          <GarmentSection
            collection={notebook.garments}
            bodies={notebook.bodies}
            tape={tape}
            openQuestions={openQuestions}
          />
        </Section>
        <NextLeafLink to="yarn" />
      </Leaf>
      <Leaf name="yarn" open={open === 'yarn'}>
        <Section id="yarn" title={say.yarn.title}>
          <YarnSection
            collection={notebook.yarns}
            tape={tape}
            flatMm={width === null ? ORDINARY_FLAT_MM : width * 2}
            bodyMm={profile?.values['chest-girth']?.value ?? null}
          />
        </Section>
        <NextLeafLink to="design" />
      </Leaf>
      <Leaf name="design" open={open === 'design'}>
        <Section id="design" title={say.design.title}>
          <DesignFields
            notes={notebook.design}
            tape={tape}
            hasGarment={garment?.measures.some(({ name }) => name === 'chest-width') ?? false}
            garmentHasLength={garment?.measures.some(({ name }) => name === 'shoulder-to-hem') ?? false}
            favourites={computation?.favourites ?? null}
            outcome={easeOutcome(sheet?.design.ease ?? null, tape)}
          />
        </Section>
      </Leaf>
    </>
  );
}
