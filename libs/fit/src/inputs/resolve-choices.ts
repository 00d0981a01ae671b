import type { GarmentProfile, Layer } from '#garment';
import type { Choices, Made, Reach, ShiftedRegion } from '../design/choices.ts';
import { opensAtSeam } from '../constructions/opens-at-seam.ts';
import type { OpeningPlace } from '../design/design.ts';
import { openingAsked } from '../design/opening-asked.ts';
import { regionShift } from '../evidence/region.ts';
import type { FitRequest } from './fit-request.ts';
import { askedToHip, type Wearer } from './hip-reached.ts';
import { isStiff } from './inputs.ts';
import { keptFromGarment } from './kept-from-garment.ts';
import { AT, type InputValues } from '../model/inputs.ts';

/** The garment that the design is based on; null where it is the body alone. */
const baseGarment = ({ design, garment }: FitRequest): GarmentProfile | null =>
  design.basis === 'body' ? null : garment;

const SHIFTED: readonly ShiftedRegion[] = ['chest', 'hip', 'across-back', 'armhole', 'upper-arm', 'cuff'];

const regionShiftsOf = (garment: GarmentProfile | null): Choices['regionShift'] =>
  Object.fromEntries(
    SHIFTED.map((region) => [region, garment === null ? 0 : regionShift(garment, region)]),
  ) as Choices['regionShift'];

const reachOf = (layer: Layer | null): Reach => ({
  arm: layer && layer.sleeves !== 'none' ? 1 : 0,
  wrist: layer?.sleeves === 'long' ? 1 : 0,
});

function lengthFrom({ body }: FitRequest): Choices['lengthFrom'] {
  if (body?.figure !== 'man') return 'waist';
  return body.values['back-hip-length'] ? 'hip' : 'hip-below-waist';
}

/** How much the way under the arm counts: more where it alone was measured or is in a table, less where the way along the top was (assumed). */
function underarmShare({ body }: FitRequest, sleeveIsKept: boolean): number {
  const along = body?.values['nape-to-cuff'];
  const under = body?.values['underarm-length'];
  if (sleeveIsKept || !under) return 0;
  if (!along) return 1;
  const [alongIsEstimated, underIsEstimated] = [along.how === 'estimated', under.how === 'estimated'];
  if (alongIsEstimated === underIsEstimated) return 1 / 2;
  return alongIsEstimated ? 3 / 4 : 1 / 4;
}

/** Where the maker wants the neck to open. A cardigan is open already, and a vest without shoulders has no seam beside its neck. */
function placeAsked({ silhouette, construction, opening }: FitRequest['design']): OpeningPlace | null {
  if (silhouette === 'cardigan') return 'none';
  const at = opening?.at ?? null;
  const atSeam = at === 'shoulder' || at === 'shoulders';
  return atSeam && !opensAtSeam({ silhouette, construction }) ? 'back' : at;
}

/**
 * The choices that a request makes. Whether the body comes down to the hip and whether it fits closely are taken from what is asked
 * for, until the numbers are known.
 */
export function requestedChoices(request: FitRequest, made: Made, values: InputValues, wearer: Wearer): Choices {
  const { design, fabric, rules } = request;
  const garment = baseGarment(request);
  const kept = keptFromGarment(request.garment, design);
  const easeFromGarment = 'as' in design.ease;
  const ease = easeFromGarment ? values[AT.garmentEase]! + values[AT.easeChange]! : values[AT.chosenEase]!;
  return {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    hem: design.hem ?? 'straight',
    hemIsFree: design.hem === null,
    length: design.length,
    lengthFrom: lengthFrom(request),
    hipReached: askedToHip({ length: design.length, kept, rules }, values, wearer),
    closeFitting: ease < wearer.sized['close-ease'],
    easeFromGarment,
    regionShift: regionShiftsOf(garment),
    kept,
    made,
    craft: fabric.craft,
    stiff: isStiff(request),
    ...openingAsked(placeAsked(design), design.opening?.lengthMm != null),
    underarmShare: underarmShare(request, kept.napeToCuff),
    own: { band: design.bandMm !== null, rib: design.ribMm !== null, cuff: design.cuffWidthMm !== null },
    bandless: design.bandMm === 0,
    ownNeck: {
      width: design.neckWidthMm !== null,
      front: design.frontNeckDepthMm !== null,
      back: design.backNeckDepthMm !== null,
    },
    layer: reachOf(design.layer),
    refLayer: reachOf(garment?.layer ?? null),
    ref: {
      construction: garment?.construction ?? 'set-in',
      sleeveFromCentreBack: garment?.sleeveFrom === 'centre-back',
      widthGiven: Boolean(garment?.values['cross-back-width']),
    },
    usable: {
      rib: fabric.ribUsable,
      main: fabric.mainUsable,
      mainMeasured: fabric.stretch !== null,
    },
    rules,
  };
}
