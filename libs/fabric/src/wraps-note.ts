import type { Note } from '#measure';
import { categoriesOfWraps, YARN_WEIGHTS } from './yarn-weights.ts';

/** Wraps do not name a category, since the bands overlap: says which they lie in, and whether the maker's own is one of them. */
export function wrapsNote(wrapsPerInch: number, weightCategory: number | null): Note {
  const fitting = categoriesOfWraps(wrapsPerInch);
  const bands = `${wrapsPerInch} wraps per inch lie in ${inWords(fitting.map(({ category, name }) => `${category} (${name})`))}.`;
  const source = YARN_WEIGHTS.source;
  if (weightCategory === null || fitting.some(({ category }) => category === weightCategory))
    return { code: 'wraps-bands', text: bands, source };
  const doubt = `You gave weight ${weightCategory}; the wraps were used. Wrap again, side by side without stretching, to be sure.`;
  return { code: 'wraps-and-category-differ', text: `${bands} ${doubt}`, source };
}

function inWords(weights: readonly string[]): string {
  if (weights.length === 0) return 'no weight’s band';
  return weights.length === 1
    ? `the band of weight ${weights[0]}`
    : `the bands of weights ${weights.join(', ')}, which overlap`;
}
