import type { Rules } from '../design/rules.ts';
import { kappaOf, rulesAtSize } from '../design/scale.ts';
import type { ResolvedWearer } from './resolve-wearer.ts';

/** How much ease the sweaters that she likes have: of how many, the mean and its standard deviation. mm */
export interface Favourites {
  readonly count: number;
  readonly mean: number;
  readonly sd: number;
}

/** From so many sweaters on their ease is a choice. */
const LEAST = 2;

/** The ease of the sweaters whose chest wears right, as draws from her taste beside what sweaters usually have, which weighs as one of them; null for fewer than two. */
export function favouritesOf({ body, garments }: ResolvedWearer, rules: Rules): Favourites | null {
  const sized = rulesAtSize(rules, kappaOf(body, rules));
  const eases = garments
    .filter(({ values, wears }) => values['chest-width'] && (wears.chest ?? 'right') === 'right')
    .map(({ ease }) => ease.value);
  const count = eases.length;
  if (count < LEAST) return null;
  const [usual, spread] = [sized['sweater-ease'], sized['sweater-ease-spread']];
  const mean = (usual + sumOf(eases)) / (count + 1);
  const variance = (spread ** 2 + (usual - mean) ** 2 + sumOf(eases.map((ease) => (ease - mean) ** 2))) / (count + 1);
  return { count, mean, sd: Math.sqrt(variance) };
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);
