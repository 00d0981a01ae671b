import type { Advice, Collision } from './advice.ts';
import { advisedEase } from './advised-ease.ts';
import { cautionsFor } from './cautions.ts';
import { checkAll, type Checked } from './checking.ts';
import { DimensionWriter } from './dimensions.ts';
import type { FitRequest } from './fit-request.ts';
import { MissingMeasures } from './missing.ts';
import { notesOn } from './notes.ts';
import { cureForNoSleeve } from './no-sleeve.ts';
import { S } from './slots.ts';
import { settle, workOut } from './work-out.ts';

/**
 * From a body, a garment that fits and a fabric to finished measurements: every piece with its reasons, uncertainty and
 * leeway, every check, every caution. A measure that is missing gives "no advice" where it is needed, never a guess.
 * @throws DomainError `body-missing`, `garment-missing`, `garment-chest-width-missing`, `made-unknown`, `made-unfit`,
 * `made-twice`; pointers are places in the request.
 */
export function advise(request: FitRequest): Advice {
  const worked = workOut(request);
  const { kappa, inputs, decisions, model, nudging, figures } = worked;
  const missing = once(() => {
    const adult = Number.isNaN(kappa) ? settle(request, 1).inputs : inputs;
    return new MissingMeasures(model, inputs, adult, kappa, request.body);
  });
  const cure = cureForNoSleeve(nudging.base, decisions);
  const checked = checkAll(request, worked, missing);
  const checks = checked.map(({ check }) => check);
  const writer = new DimensionWriter({
    plan: model.plan,
    nudging,
    decisions,
    figures,
    missing,
    growth: request.fabric.growth ?? { across: 0, along: 0 },
    seamAllowance: request.design.seamAllowanceMm,
    noSleeve: cure === null ? null : { code: 'no-sleeve', params: { cure }, needs: [] },
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
    cautions: cautionsFor(request.body, nudging.base[S.bodyFlat]!),
    notes: notesOn(request, worked, checks, pieces),
  };
}

/** Makes it when it is first asked for, and only then. */
function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

function collisionsOf(checked: readonly Checked[]): Collision[] {
  return checked
    .filter(({ check }) => check.verdict === 'fails')
    .map(({ rule }) => ({ wishes: rule.wishes, dimension: rule.dimension }));
}
