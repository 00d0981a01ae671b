import type { BodyDimension } from '#body';
import type { Advice, Collision, NoAdvice } from './advice.ts';
import { advisedEase, easeLeeway } from './advised-ease.ts';
import { cautionsFor } from './cautions.ts';
import { checkAll, type Checked } from './checking.ts';
import { decide } from './decide.ts';
import type { Decisions } from './decisions.ts';
import { DimensionWriter } from './dimensions.ts';
import { assembledPlan } from './dimension-plan.ts';
import type { FitRequest } from './fit-request.ts';
import { type Inputs, inputsOf } from './inputs.ts';
import { readMade } from './made.ts';
import { MissingMeasures } from './missing.ts';
import { Model } from './model.ts';
import { notesOn } from './notes.ts';
import { Nudging } from './nudging.ts';
import { kappaOf, scaled } from './scale.ts';
import { S } from './slots.ts';

/**
 * From a body, a garment that fits and a fabric to finished measurements: every piece with its reasons, uncertainty and
 * leeway, every check, every caution. A measure that is missing gives "no advice" where it is needed, never a guess.
 * @throws DomainError `body-missing`, `garment-chest-width-missing`, `made-unknown`, `made-unfit`, `made-twice`; pointers
 * are places in the request.
 */
export function advise(request: FitRequest): Advice {
  const kappa = kappaOf(request.body, request.rules);
  const { inputs, decisions } = settle(request, kappa);
  const nudging = new Nudging(new Model(inputs.values, decisions), inputs, request.body?.covariance ?? null);
  const v = nudging.base;
  const missing = once(() => {
    const adult = Number.isNaN(kappa) ? settle(request, 1).inputs : inputs;
    return new MissingMeasures(inputs, adult, decisions, request.body);
  });
  const checked = checkAll(nudging, decisions, missing);
  const checks = checked.map(({ check }) => check);
  const writer = new DimensionWriter({
    nudging,
    decisions,
    checked,
    band: easeLeeway(request, nudging, decisions),
    missing,
    growth: request.fabric.growth ?? { across: 0, along: 0 },
    seamAllowance: request.design.seamAllowanceMm,
    noSleeve: noSleeveReason(v, decisions),
  });
  const pieces = writer.pieces();
  const { silhouette, length, neckline, basis } = request.design;
  return {
    design: {
      silhouette,
      construction: decisions.construction,
      length,
      neckline,
      basis,
      ease: advisedEase(request, nudging, decisions),
    },
    assembled: writer.assembled(),
    pieces,
    checks,
    collisions: collisionsOf(checked),
    cautions: cautionsFor(request.body?.figure ?? null),
    notes: notesOn(request, nudging, decisions, checks, pieces),
    sensitivity: sensitivityOf(nudging, decisions),
  };
}

/** Makes it when it is first asked for, and only then. */
function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

/** Inputs and decisions; a squared drop that turns out to have no inset is settled again as a drop shoulder. */
function settle(request: FitRequest, kappa: number): { inputs: Inputs; decisions: Decisions } {
  const { design, rules } = request;
  const frontBand = design.frontBandMm ?? scaled('front-band-width', rules, kappa);
  const made = readMade(request.made, design, frontBand, design.overlapMm ?? frontBand);
  const inputs = inputsOf(request, kappa, made.inputs);
  const decisions = decide(request, inputs, kappa, made);
  if (decisions.construction === design.construction) return { inputs, decisions };
  return settle({ ...request, design: { ...design, construction: decisions.construction } }, kappa);
}

/** A sleeve that no cap height joins to its armhole, though both are known. */
function noSleeveReason(v: Float64Array, d: Decisions): NoAdvice | null {
  if (d.silhouette === 'vest') return null;
  const unjoined =
    (d.construction === 'set-in' && Number.isNaN(v[S.cap]!) && !Number.isNaN(v[S.armholeSeam]! + v[S.sleeveTop]!)) ||
    (d.construction === 'raglan' &&
      Number.isNaN(v[S.sleeveRaglan]!) &&
      !Number.isNaN(v[S.raglanEdge]! + v[S.sleeveTop]!));
  return unjoined
    ? { needs: [], reason: 'No sleeve of this width joins the armhole; choose a squared drop, or less ease.' }
    : null;
}

function collisionsOf(checked: readonly Checked[]): Collision[] {
  return checked
    .filter(({ check }) => check.verdict === 'fails')
    .map(({ rule }) => ({ wishes: rule.wishes, dimension: rule.dimension }));
}

/** Of every body dimension that enters, how the assembled dimensions move with it, mm a mm. */
function sensitivityOf(nudging: Nudging, d: Decisions): Advice['sensitivity'] {
  const plan = assembledPlan(d);
  const of: Partial<Record<BodyDimension, Record<string, number>>> = {};
  for (const column of nudging.columns) {
    if (column.input.body === null) continue;
    const moved: Record<string, number> = {};
    for (const { name, slot } of plan) {
      const slope = column.moved.slope(slot);
      if (Math.abs(slope) > 1e-9) moved[name] = slope;
    }
    of[column.input.body] = moved;
  }
  return of;
}
