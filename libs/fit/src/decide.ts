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

/** Whether a length comes down to the hip; where it is not known how far down that is, it is taken to. */
function reachesHip(length: number, v: Row, rules: Rules, sized: Rules): boolean {
  const below = length - waistOf(v, rules);
  return Number.isNaN(below) || below >= sized['hip-reached'];
}

/** Whether the design's length comes down to the hip. */
function hipReached(request: FitRequest, inputs: Inputs, taken: TakenOver, sized: Rules): boolean {
  const { design, body, rules } = request;
  const v = inputs.values;
  if (design.length === 'custom') return reachesHip(v[S.customLength]!, v, rules, sized);
  if (taken.length) return reachesHip(v[S.refShoulderToHem]! - v[S.refBackNeck]!, v, rules, sized);
  return body?.figure === 'man' ? design.length !== 'cropped' : v[S.lengthOffset]! >= sized['hip-reached'];
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
  const first: Decisions = {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    hem: design.hem,
    rules,
    tape,
    figure: request.body?.figure ?? null,
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
    hipReached: hipReached(request, inputs, taken, sized),
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
 * The decisions that hang on the numbers: whether a body made so long comes down to the hip, which region governs, whether it
 * fits closely, whether a squared drop has an inset. A hip that is not known governs nothing: its check says that it is not known.
 */
function governed(asDesigned: Decisions, inputs: Inputs): Decided {
  const without = asMade(workedOut(asDesigned, inputs), inputs);
  const first = without.decisions;
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

/**
 * A body made to its underarm is as long as it was made, however long it is wished: longer than that it comes down to the hip
 * where its length does, shorter it may no more.
 */
function asMade(designed: Decided, inputs: Inputs): Decided {
  const { decisions, row } = designed;
  if (!decisions.made.bodyToUnderarm) return designed;
  const longer = row[S.length]! - row[S.lengthWished]!;
  if (!(Math.abs(longer) > 1e-6)) return designed;
  const reaches = reachesHip(row[S.length]!, row, decisions.rules, decisions.sized);
  const hipReached = longer > 0 ? decisions.hipReached || reaches : decisions.hipReached && reaches;
  return hipReached === decisions.hipReached ? designed : workedOut({ ...decisions, hipReached }, inputs);
}

function workedOut(decisions: Decisions, inputs: Inputs): Decided {
  const model = modelOf(decisions);
  return { decisions, model, row: model.steps.workOut(inputs.values) };
}
