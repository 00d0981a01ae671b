import type { GarmentProfile } from '#garment';
import type { KeptFromGarment } from '../design/choices.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Design } from '../design/design.ts';

const NOTHING: KeptFromGarment = {
  chest: false,
  hem: false,
  upperArm: false,
  wrist: false,
  acrossBack: false,
  armhole: false,
  length: false,
  napeToCuff: false,
  neckWidth: false,
  frontNeck: false,
  backNeck: false,
};

/** Which dimensions the garment that fits gives a design; none where there is no garment. */
export function keptFromGarment(garment: GarmentProfile | null, design: Design): KeptFromGarment {
  if (garment === null) return NOTHING;
  const has = garment.values;
  const ref = CONSTRUCTIONS[garment.construction];
  const girthTops = ref.sleeveTopIs === 'girth' && CONSTRUCTIONS[design.construction].sleeveTopIs === 'girth';
  const fromBack = garment.sleeveFrom === 'centre-back' || ref.refSleeveNeeds.some((name) => has[name]);
  return {
    chest: Boolean(has['chest-width']),
    hem: Boolean(has['hem-width']),
    upperArm: Boolean(has['sleeve-top-width']) && girthTops,
    wrist: Boolean(has['cuff-width']),
    acrossBack: Boolean(has['cross-back-width']) && ref.hasAcrossBack,
    armhole: Boolean(has['armhole-depth']),
    length: Boolean(has['shoulder-to-hem'] && has['back-neck-depth']) && design.length !== 'custom',
    napeToCuff: Boolean(has['sleeve-length']) && fromBack,
    neckWidth: Boolean(has['neck-width']),
    frontNeck: Boolean(has['front-neck-depth']),
    backNeck: Boolean(has['back-neck-depth']),
  };
}
