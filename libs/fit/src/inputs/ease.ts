import { EASE_CATEGORIES, type EaseCategory, type EaseChoice } from '../design/design.ts';
import type { EasePlace } from '../messages/ease-codes.ts';
import type { Source } from '../messages/source-codes.ts';
import { NONE } from '../messages/none.ts';
import type { RuleName, Rules } from '../design/rules.ts';

/** An ease band at this size, mm. */
export interface EaseBand {
  readonly category: EaseCategory;
  readonly from: number;
  readonly to: number;
}

const BAND_RULES: readonly { category: EaseCategory; from: RuleName; to: RuleName }[] = EASE_CATEGORIES.map(
  (category) => ({ category, from: `ease-${category}-from`, to: `ease-${category}-to` }),
);

/**
 * The five bands, closest first; `sized` are the rules at the wearer's size.
 * Source: Craft Yarn Council, Standards & Guidelines (from memory), see the rule table.
 */
export function easeBands(sized: Rules): readonly EaseBand[] {
  return BAND_RULES.map(({ category, from, to }) => ({ category, from: sized[from], to: sized[to] }));
}

/** An ease that does not follow a garment's. */
type ChosenEase = Exclude<EaseChoice, { as: 'garment' }>;

/** The chosen ease E, mm. */
export function chosenEase(choice: ChosenEase, bands: readonly EaseBand[]): number {
  if ('mm' in choice) return choice.mm;
  const band = bands.find((each) => each.category === choice.category)!;
  return band.from + choice.place * (band.to - band.from);
}

/** Where the number of the chosen ease is from. */
export function easeSource(choice: ChosenEase): Source {
  if ('mm' in choice) return { code: 'chosen', params: NONE };
  return { code: 'rule', params: { rule: `ease-${choice.category}-from` } };
}

/** The band an ease lies in; a shared end belongs to the closer-fitting one; null between and outside the bands. */
export function bandOf(ease: number, bands: readonly EaseBand[]): EaseBand | null {
  return bands.find((band) => ease >= band.from - 1e-9 && ease <= band.to + 1e-9) ?? null;
}

/** Where an ease lies: in a band, between two, or beyond an end. A shared end belongs to the chosen one. */
export function easeLies(ease: number, bands: readonly EaseBand[], chosen: EaseCategory | null): EasePlace {
  const within =
    bandOf(
      ease,
      bands.filter(({ category }) => category === chosen),
    ) ?? bandOf(ease, bands);
  if (within) return { code: 'within', params: { category: within.category } };
  const looser = bands.findIndex((band) => ease < band.from);
  if (looser === 0) return { code: 'closer-than', params: { category: bands[0]!.category } };
  if (looser === -1) return { code: 'within', params: { category: 'oversized' } };
  return {
    code: 'between',
    params: { closer: bands[looser - 1]!.category, looser: bands[looser]!.category },
  };
}
