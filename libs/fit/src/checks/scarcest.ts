import { besideLeast, minus } from '#measure';
import type { ValueOf } from '../model/path.ts';
import type { Alternative, Limits } from './check.ts';

export const alternative = (name: string, { need, have }: Limits): Alternative => ({
  name,
  need,
  have,
  spare: minus(have, need),
});

/** The limits of the comparison that has the least to spare. */
export function scarcest(alternatives: readonly Alternative[]): Limits {
  const spare = alternatives.map((each) => each.spare);
  return {
    need: besideLeast(
      spare,
      alternatives.map(({ need }) => need),
    ),
    have: besideLeast(
      spare,
      alternatives.map(({ have }) => have),
    ),
    alternatives,
  };
}

/** Which of them that is; one that is not known counts as the scarcest. */
export const scarcestOf = (alternatives: readonly Alternative[], v: ValueOf): Alternative =>
  alternatives.reduce((least, each) =>
    !(v(each.spare) >= v(least.spare)) && !Number.isNaN(v(least.spare)) ? each : least,
  );
