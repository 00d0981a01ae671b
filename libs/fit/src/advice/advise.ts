import type { Advice } from '../messages/advice.ts';
import { advisedEase } from '../evaluation/advised-ease.ts';
import { cautionsFor } from './cautions.ts';
import { judgeAll } from '../judging/judge-all.ts';
import { compute } from '../evaluation/compute.ts';
import { DimensionWriter } from './dimensions.ts';
import type { FitRequest } from '../inputs/fit-request.ts';
import { MissingMeasures } from '../evaluation/missing.ts';
import { cureForNoSleeve } from '../evaluation/no-sleeve.ts';
import { notesOn } from './notes.ts';
import { sheetNumbers } from '../evaluation/sheet-numbers.ts';

/**
 * From a body, a garment that fits and a fabric to finished measurements: every piece with its reasons, uncertainty and
 * leeway, every check, every caution. A measure that is missing gives "no advice" where it is needed, never a guess.
 * @throws DomainError `body-missing`, `garment-missing`, `garment-chest-width-missing`, `made-unknown`, `made-unfit`,
 * `made-twice`; pointers are places in the request.
 */
export function advise(request: FitRequest): Advice {
  const computed = compute(request);
  const { choices, model, evaluation } = computed;
  const missing = once(() => new MissingMeasures(computed));
  const cure = cureForNoSleeve(computed);
  const judged = judgeAll(computed, missing);
  const checks = judged.map(({ check }) => check);
  const noSleeve = cure === null ? null : ({ code: 'no-sleeve', params: { cure }, needs: [] } as const);
  const writer = new DimensionWriter(computed, sheetNumbers(computed), missing, noSleeve);
  const pieces = writer.pieces();
  const { silhouette, length, neckline, basis } = request.design;
  return {
    design: {
      silhouette,
      construction: choices.construction,
      length,
      neckline,
      basis,
      opening: {
        at: choices.opening.at,
        // An opening whose length is not known has none yet; its dimension says what is missing.
        length: (model.garment.opening && evaluation.value(model.garment.opening.length)) || 0,
      },
      ease: advisedEase(computed),
    },
    assembled: writer.assembled(),
    pieces,
    checks,
    collisions: judged
      .filter(({ check }) => check.verdict === 'fails')
      .map(({ rule: { wishes, dimension } }) => {
        const place = model.placed.find(({ planned }) => planned.name === dimension);
        return { wishes, piece: place?.piece ?? 'assembled', dimension };
      }),
    cautions: cautionsFor(request.body, evaluation.value(model.garment.girths.bodyFlat)),
    notes: notesOn(computed, checks, pieces),
  };
}

/** Makes it when it is first asked for, and only then. */
function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
