import type { MeaningTexts } from '../meanings.ts';
import { checkMeanings } from './check-meanings.ts';
import { dimensionMeanings } from './dimension-meanings.ts';
import { ruleMeanings } from './rule-meanings.ts';

/** What names mean, in English. */
export const meanings: MeaningTexts = {
  rule: ruleMeanings,
  dimension: dimensionMeanings,
  check: checkMeanings,
};
