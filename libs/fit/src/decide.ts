import { DomainError } from '#measure';
import type { Construction, GarmentProfile, Layer } from '#garment';
import type { Decisions, TakenOver } from './decisions.ts';
import type { FitRequest } from './fit-request.ts';
import type { Inputs } from './inputs.ts';
import type { MadeRead } from './made.ts';
import { type Model, modelOf } from './model.ts';
import type { Rules } from './rules.ts';
import { type Row, S } from './slots.ts';

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
      : has['cross-back-width'] || garment.construction === 'drop-shoulder';
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
function lengthFrom({ body }: FitRequest): Decisions['lengthFrom'] {
  if (body?.figure !== 'man') return 'waist';
  return body.values['back-hip-length'] ? 'hip' : 'hip below waist';
}

/** How far the waist lies below the nape, mm: measured, or told from the hip; NaN where neither is known. */
export function waistOf(v: Row, rules: Rules): number {
  const measured = v[S.backWaist]!;
  return Number.isNaN(measured) ? v[S.backHip]! - rules['hip-below-waist-man'] : measured;
}

/** Whether the design's length comes down to the hip. */
function hipReached(request: FitRequest, inputs: Inputs, taken: TakenOver, sized: Rules): boolean {
  const { design, body, rules } = request;
  const man = body?.figure === 'man';
  const below = sized['hip-reached'];
  if (design.length !== 'custom' && !taken.length)
    return man ? design.length !== 'cropped' : inputs.values[S.lengthOffset]! >= below;
  const v = inputs.values;
  const length = design.length === 'custom' ? v[S.customLength]! : v[S.refShoulderToHem]! - v[S.refBackNeck]!;
  const waist = waistOf(v, rules);
  return Number.isNaN(waist) || length - waist >= below;
}

/** What was decided, the model for it, and every number of it. */
export interface Decided {
  readonly decisions: Decisions;
  readonly model: Model;
  readonly row: Row;
}

/** Everything that is a choice, decided once from the request; some of it by working the model out without it first. */
export function decide(request: FitRequest, inputs: Inputs, kappa: number, sized: Rules, made: MadeRead): Decided {
  const { design, fabric, garment, rules, tape } = request;
  const useGarment = design.basis !== 'body' ? garment : null;
  if (design.basis !== 'body' && !useGarment?.values['chest-width'])
    throw new DomainError(
      'garment-chest-width-missing',
      `The basis "${design.basis}" needs a garment that fits, with its chest width.`,
      '/garment',
    );
  if (design.basis !== 'garment' && !request.body)
    throw new DomainError('body-missing', `The basis "${design.basis}" needs a body.`, '/body');
  const taken = useGarment ? takenFrom(useGarment, request) : NOTHING_TAKEN;
  const reached = hipReached(request, inputs, taken, sized);
  const first: Decisions = {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    hem: design.hem,
    rules,
    tape,
    sized,
    kappa,
    easeFromGarment: design.basis === 'garment',
    taken,
    made: made.made,
    ownNeckWidth: design.neckWidthMm !== null,
    ownFrontNeck: design.frontNeckDepthMm !== null,
    ownBackNeck: design.backNeckDepthMm !== null,
    customLength: design.length === 'custom',
    lengthFrom: lengthFrom(request),
    hipReached: reached,
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
  return governed(first, inputs);
}

/**
 * The decisions that hang on the numbers: which region governs, whether it fits closely, whether a squared drop has an inset.
 * A hip that is not known governs nothing: its check says that it is not known.
 */
function governed(first: Decisions, inputs: Inputs): Decided {
  const without = workedOut(first, inputs);
  const v = without.row;
  const wider = v[S.hipFlat]! > v[S.chestFlat]! + 1e-9;
  const straight = first.hem === 'straight' && first.hipReached;
  const hipGoverns = straight && wider;
  const closeFitting = v[S.ease]! < first.sized['close-ease'];
  const decided = hipGoverns || closeFitting ? workedOut({ ...first, hipGoverns, closeFitting }, inputs) : without;
  return first.construction === 'squared-drop' && decided.row[S.inset]! < first.sized['squared-inset-least']
    ? workedOut({ ...decided.decisions, construction: 'drop-shoulder' }, inputs)
    : decided;
}

function workedOut(decisions: Decisions, inputs: Inputs): Decided {
  const model = modelOf(decisions);
  return { decisions, model, row: model.steps.workOut(inputs.values) };
}
