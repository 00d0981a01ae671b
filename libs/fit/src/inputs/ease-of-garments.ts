import { kappaOf, rulesAtSize } from '../design/scale.ts';
import type { Rules } from '../design/rules.ts';
import { easeBands, easeLies } from './ease.ts';
import type { EasePlace } from '../messages/ease-codes.ts';
import type { ResolvedWearer } from '../evidence/resolve-wearer.ts';

/** The ease that a garment that fits has on its wearer, in the terms of the table, and where it lies among the bands. mm */
interface EaseOfGarment {
  readonly value: number;
  readonly u: number;
  readonly lies: EasePlace;
}

/** That of each garment, in the order in which they were given. */
export function easeOfGarments({ body, garments }: ResolvedWearer, rules: Rules): readonly EaseOfGarment[] {
  const kappa = kappaOf(body, rules);
  const bands = easeBands(rulesAtSize(rules, Number.isNaN(kappa) ? 1 : kappa));
  return garments.map(({ ease: { value, u }, fits }) => ({ value, u, lies: easeLies(value, bands, fits) }));
}
