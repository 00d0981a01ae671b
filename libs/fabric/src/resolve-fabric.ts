import type { Craft, Fabric, FabricInput } from './fabric.ts';
import type { Stitch } from './stitch.ts';
import type { FabricNote } from './fabric-messages.ts';
import { fabricProblems } from './fabric-problems.ts';
import { usableAcross, usableOf } from './stretch.ts';
import { thicknessOf } from './thickness.ts';

const USUAL_STITCH: Readonly<Record<Craft, Stitch>> = { knit: 'stockinette', crochet: 'single-crochet' };

/** Usable stretch of a rib that was not measured, across (assumed). */
const RIB_USABLE: Readonly<Record<Craft, number>> = { knit: 0.5, crochet: 0.2 };

const NO_SWATCH: FabricNote = { code: 'growth-unknown', params: {} };
const NO_STRETCH: FabricNote = { code: 'stretch-assumed', params: {}, source: { code: 'assumed', params: {} } };
const NO_RIB: FabricNote = { code: 'rib-assumed', params: {}, source: { code: 'assumed', params: {} } };

/**
 * What a maker knows of her yarn and swatch, ready for the arithmetic of fit: the thickness with its uncertainty and where
 * it is from (measured, yarn, category, in order of trust), growth, stretch, and notes on what would make it surer.
 *
 * @throws DomainError `thickness-unknown`, or the first of `fabricProblems`; each points to its field
 */
export function resolveFabric(input: FabricInput): Fabric {
  const [problem] = fabricProblems(input);
  if (problem !== undefined) throw problem;
  const { craft, growth, stretch, ribStretch, massPerAreaGsm } = input;
  const found = thicknessOf(input, input.stitch ?? USUAL_STITCH[craft]);
  const { thicknessMm, thicknessU, from, source, notes } = found;
  return {
    craft,
    thicknessMm,
    thicknessU,
    from,
    source,
    growth,
    stretch,
    mainUsable: usableAcross(craft, stretch),
    ribUsable: ribStretch === null ? RIB_USABLE[craft] : usableOf(ribStretch),
    ribMeasured: ribStretch !== null,
    massPerAreaGsm,
    notes: [
      ...notes,
      ...(growth === null ? [NO_SWATCH] : []),
      ...(stretch === null ? [NO_STRETCH] : []),
      ...(ribStretch === null ? [NO_RIB] : []),
    ],
  };
}
