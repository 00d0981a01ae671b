import type { GarmentProfile, Layer } from '#garment';
import type { Choices, Made, Reach } from '../design/choices.ts';
import { fitError } from '../design/fit-errors.ts';
import type { FitRequest } from './fit-request.ts';
import { askedToHip, type Wearer } from './hip-reached.ts';
import { keptFromGarment } from './kept-from-garment.ts';
import { AT, type InputValues } from '../model/inputs.ts';

/** The garment that the design is based on; null where it is the body alone. */
const baseGarment = ({ design, garment }: FitRequest): GarmentProfile | null =>
  design.basis === 'body' ? null : garment;

/** Refuses a request that lacks what its basis needs. */
function checkBasis({ design, garment, body }: FitRequest): void {
  const { basis } = design;
  if (basis !== 'body' && !garment) throw fitError('garment-missing', { basis }, '/garment');
  if (basis === 'garment' && !garment?.values['chest-width'])
    throw fitError('garment-chest-width-missing', {}, '/garment');
  if (basis !== 'garment' && !body) throw fitError('body-missing', { basis }, '/body');
}

const reachOf = (layer: Layer | null): Reach => ({
  arm: layer && layer.sleeves !== 'none' ? 1 : 0,
  wrist: layer?.sleeves === 'long' ? 1 : 0,
});

function lengthFrom({ body }: FitRequest): Choices['lengthFrom'] {
  if (body?.figure !== 'man') return 'waist';
  return body.values['back-hip-length'] ? 'hip' : 'hip-below-waist';
}

/**
 * The choices that a request makes. Whether the body comes down to the hip and whether it fits closely are taken from what is asked
 * for, until the numbers are known.
 * @throws DomainError `garment-missing`, `garment-chest-width-missing`, `body-missing`
 */
export function requestedChoices(request: FitRequest, made: Made, values: InputValues, wearer: Wearer): Choices {
  checkBasis(request);
  const { design, fabric, rules } = request;
  const garment = baseGarment(request);
  const kept = keptFromGarment(garment, design);
  const easeFromGarment = design.basis === 'garment';
  return {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    hem: design.hem,
    length: design.length,
    lengthFrom: lengthFrom(request),
    hipReached: askedToHip({ length: design.length, kept, rules }, values, wearer),
    closeFitting: !easeFromGarment && values[AT.chosenEase]! < wearer.sized['close-ease'],
    easeFromGarment,
    kept,
    made,
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
      main: fabric.stretch ? fabric.stretch.across / 2 : 0,
      mainMeasured: fabric.stretch !== null,
    },
    rules,
  };
}
