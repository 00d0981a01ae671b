import type { FabricNote } from './fabric-messages.ts';
import { categoriesOfWraps, YARN_WEIGHTS } from './yarn-weights.ts';

/** Wraps do not name a category, since the bands overlap: says which they lie in, and whether the maker's own is one of them. */
export function wrapsNote(wrapsPerInch: number, weightCategory: number | null): FabricNote {
  const weights = categoriesOfWraps(wrapsPerInch).map(({ category, name }) => ({ category, name }));
  const source = { code: 'publication', params: { title: YARN_WEIGHTS.source } } as const;
  if (weightCategory === null || weights.some(({ category }) => category === weightCategory))
    return { code: 'wraps-bands', params: { wrapsPerInch, weights }, source };
  return {
    code: 'wraps-and-category-differ',
    params: { wrapsPerInch, weights, category: weightCategory },
    source,
  };
}
