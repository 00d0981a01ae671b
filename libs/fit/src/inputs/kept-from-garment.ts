import type { GarmentDimension, GarmentProfile } from '#garment';
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
  fromBackNeck: false,
  napeToCuff: false,
  neckWidth: false,
  frontNeck: false,
  backNeck: false,
};

/** Which dimensions the garment that fits gives a design: on the basis of the body, its length where that was asked for. */
export function keptFromGarment(garment: GarmentProfile | null, design: Design): KeptFromGarment {
  if (garment === null) return NOTHING;
  const has = garment.values;
  const lengths = { length: design.length === 'as-garment', fromBackNeck: Boolean(has['back-neck-depth']) };
  if (design.basis === 'body') return { ...NOTHING, ...lengths };
  const ref = CONSTRUCTIONS[garment.construction];
  const girthTops = ref.sleeveTopIs === 'girth' && CONSTRUCTIONS[design.construction].sleeveTopIs === 'girth';
  const { refSleeveNeeds } = ref;
  const fromBack =
    garment.sleeveFrom === 'centre-back' || refSleeveNeeds.length === 0 || refSleeveNeeds.some((name) => has[name]);
  const longSleeve = garment.sleeve === 'long';
  const sameNeck = garment.neckline === null || garment.neckline === design.neckline;
  return {
    chest: Boolean(has['chest-width']),
    hem: Boolean(has['hem-width']),
    upperArm: Boolean(has['sleeve-top-width']) && girthTops,
    wrist: Boolean(has['cuff-width']) && longSleeve,
    acrossBack: Boolean(has['cross-back-width']) && ref.hasAcrossBack,
    armhole: armholeFrom(garment) !== null,
    ...lengths,
    napeToCuff: Boolean(has['sleeve-length']) && fromBack && longSleeve,
    neckWidth: Boolean(has['neck-width']) && sameNeck,
    frontNeck: Boolean(has['front-neck-depth']) && sameNeck,
    backNeck: Boolean(has['back-neck-depth']) && sameNeck,
  };
}

/** The measure of a garment that its armhole's depth is read from: a sleeve that is sewn to a straight edge is as wide as that is deep. */
export function armholeFrom({ construction, values }: GarmentProfile): GarmentDimension | null {
  if (values['armhole-depth']) return 'armhole-depth';
  return CONSTRUCTIONS[construction].sleeveTopIs === 'seam' && values['sleeve-top-width'] ? 'sleeve-top-width' : null;
}
