import { DomainError } from '#measure';
import type { Construction, GarmentProfile, Layer } from '#garment';
import type { Decisions, Made, TakenOver } from './decisions.ts';
import type { FitRequest } from './fit-request.ts';
import { type Decided, governed, wishedToHip } from './governed.ts';
import type { Rules } from './rules.ts';
import type { Row } from './slots.ts';

const NOTHING_TAKEN: TakenOver = {
  chest: false,
  hem: false,
  upperArm: false,
  wrist: false,
  acrossBack: false,
  armhole: false,
  length: false,
  nape: false,
  neckWidth: false,
  frontNeck: false,
  backNeck: false,
};

const hasSleeveGirth = (construction: Construction): boolean => construction === 'set-in' || construction === 'raglan';

/** Which dimensions the garment that fits gives this design. */
function takenFrom(garment: GarmentProfile, request: FitRequest): TakenOver {
  const has = garment.values;
  const { design } = request;
  const shaped = garment.construction === 'set-in' || garment.construction === 'squared-drop';
  const seamKnown =
    garment.construction === 'raglan'
      ? has['neck-width']
      : has['cross-back-width'] || (garment.construction === 'drop-shoulder' && has['chest-width']);
  return {
    chest: Boolean(has['chest-width']),
    hem: Boolean(has['hem-width']),
    upperArm:
      Boolean(has['sleeve-top-width']) && hasSleeveGirth(garment.construction) && hasSleeveGirth(design.construction),
    wrist: Boolean(has['cuff-width']),
    acrossBack: Boolean(has['cross-back-width']) && shaped,
    armhole: Boolean(has['armhole-depth']),
    length: Boolean(has['shoulder-to-hem'] && has['back-neck-depth']) && design.length !== 'custom',
    nape: Boolean(has['sleeve-length'] && (garment.sleeveFrom === 'centre-back' || seamKnown)),
    neckWidth: Boolean(has['neck-width']),
    frontNeck: Boolean(has['front-neck-depth']),
    backNeck: Boolean(has['back-neck-depth']),
  };
}

const reachesArm = (layer: Layer | null): number => (layer && layer.sleeves !== 'none' ? 1 : 0);
const reachesWrist = (layer: Layer | null): number => (layer?.sleeves === 'long' ? 1 : 0);

/** What a named length is said from. */
function lengthFrom({ body }: FitRequest): 'waist' | 'hip' | 'hip below waist' {
  if (body?.figure !== 'man') return 'waist';
  return body.values['back-hip-length'] ? 'hip' : 'hip below waist';
}

/** Everything that is a choice, decided once from the request; some of it by working the model out without it first. */
export function decide(request: FitRequest, values: Row, kappa: number, sized: Rules, made: Made): Decided {
  const { design, fabric, garment, rules, tape } = request;
  const useGarment = design.basis !== 'body' ? garment : null;
  if (design.basis !== 'body' && !useGarment)
    throw new DomainError('garment-missing', `The basis "${design.basis}" needs a garment that fits.`, '/garment');
  if (design.basis === 'garment' && !useGarment?.values['chest-width'])
    throw new DomainError(
      'garment-chest-width-missing',
      'The basis "garment" needs the chest width of the garment that fits.',
      '/garment',
    );
  if (design.basis !== 'garment' && !request.body)
    throw new DomainError('body-missing', `The basis "${design.basis}" needs a body.`, '/body');
  const taken = useGarment ? takenFrom(useGarment, request) : NOTHING_TAKEN;
  const figure = request.body?.figure ?? null;
  const designed: Decisions = {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    hem: design.hem,
    rules,
    tape,
    figure,
    sized,
    kappa,
    easeFromGarment: design.basis === 'garment',
    taken,
    made,
    ownNeckWidth: design.neckWidthMm !== null,
    ownFrontNeck: design.frontNeckDepthMm !== null,
    ownBackNeck: design.backNeckDepthMm !== null,
    length: design.length,
    lengthFrom: lengthFrom(request),
    hipReached: wishedToHip({ length: design.length, taken, figure, rules, sized }, values),
    hipGoverns: false,
    layerArm: reachesArm(design.layer),
    layerWrist: reachesWrist(design.layer),
    refLayerArm: reachesArm(useGarment?.layer ?? null),
    refLayerWrist: reachesWrist(useGarment?.layer ?? null),
    refConstruction: useGarment?.construction ?? 'set-in',
    sleeveFromCentreBack: useGarment?.sleeveFrom === 'centre-back',
    refWidthGiven: Boolean(useGarment?.values['cross-back-width']),
    ribUsable: fabric.ribUsable,
    mainUsable: fabric.stretch ? fabric.stretch.across / 2 : 0,
    mainMeasured: fabric.stretch !== null,
    closeFitting: false,
  };
  return governed(designed, values);
}
