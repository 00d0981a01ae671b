import type { MessageOf } from '#measure';
import { GARMENT_DIMENSIONS, type GarmentDimension } from './garment-dimension.ts';
import type { GarmentProfile } from './garment.ts';
import { usualProportion, type Proportion } from './usual-proportions.ts';

/** The slips of the pen and the tape that are known to happen to a flat garment. */
export const GARMENT_SLIPS = ['girth-for-width', 'half-for-width', 'inches-for-cm', 'cm-for-inches'] as const;
export type GarmentSlip = (typeof GARMENT_SLIPS)[number];

/** The measure that is hard to believe, and what it was compared with. `smaller` than expected, else larger. */
type UnlikelyMeasure = {
  readonly name: GarmentDimension;
  readonly smaller: boolean;
  readonly comparedWith: 'body' | 'garment';
};

/** What is asked about a measure of a garment, by the likeliest slip. */
export type GarmentQuestionCodes = { readonly [Slip in GarmentSlip]: UnlikelyMeasure };

/** A question about one measure, and what the value would become. Nothing is changed by it. mm. */
export type GarmentQuestion = MessageOf<GarmentQuestionCodes> & {
  readonly name: GarmentDimension;
  readonly value: number;
  readonly wouldBe: number;
};

const REPAIR: Readonly<Record<GarmentSlip, number>> = {
  'girth-for-width': 1 / 2,
  'half-for-width': 2,
  'inches-for-cm': 2.54,
  'cm-for-inches': 1 / 2.54,
};
/** Lengths are not measured round, nor on the fold: of them only the unit can be mistaken. */
const IN_ONE_LAYER: readonly GarmentDimension[] = ['shoulder-to-hem', 'sleeve-length'];
const UNIT_SLIPS: readonly GarmentSlip[] = ['inches-for-cm', 'cm-for-inches'];

/** The middle of classic ease, mm: what a garment is expected to be wider than a body round the chest. */
const USUAL_EASE = 75;
/** Fewer measures than this cannot say which of them is the odd one. */
const LEAST_MEASURES = 3;

/**
 * The measures of a garment that look like a slip, at most one question each, in the order of the dimensions. They are held
 * against the wearer's chest girth (mm) where it is known, else against each other. Rules and proportions are assumed; a
 * deliberate odd garment is asked about too, and the answer may be no.
 */
export function garmentQuestions(profile: GarmentProfile, bodyChestMm: number | null): readonly GarmentQuestion[] {
  const chestWidth = bodyChestMm === null ? commonChestWidth(profile) : (bodyChestMm + USUAL_EASE) / 2;
  if (chestWidth === null) return [];
  const comparedWith = bodyChestMm === null ? 'garment' : 'body';
  return GARMENT_DIMENSIONS.flatMap((name) => {
    const value = profile.values[name]?.value;
    const proportion = usualProportion(name, profile.sleeveFrom);
    if (value === undefined || proportion === undefined) return [];
    const slip = likelySlip(name, value / chestWidth, proportion);
    if (slip === undefined) return [];
    const smaller = value <= chestWidth * proportion.usual;
    return [{ code: slip, params: { name, smaller, comparedWith }, name, value, wouldBe: REPAIR[slip] * value }];
  });
}

/** The chest width that the measures agree on: the median of what each alone would let expect, so that one slip does not move it far. */
function commonChestWidth({ values, sleeveFrom }: GarmentProfile): number | null {
  const expected = GARMENT_DIMENSIONS.flatMap((name) => {
    const value = values[name]?.value;
    const proportion = usualProportion(name, sleeveFrom);
    return value === undefined || proportion === undefined ? [] : [value / proportion.usual];
  }).toSorted((a, b) => a - b);
  return expected.length < LEAST_MEASURES ? null : (expected[Math.floor(expected.length / 2)] ?? null);
}

/** The slip whose repair makes an unbelievable ratio usual, as nearly as can be; undefined where none does or none is needed. */
function likelySlip(name: GarmentDimension, ratio: number, proportion: Proportion): GarmentSlip | undefined {
  if (believed(ratio, proportion)) return undefined;
  const strangeness = (slip: GarmentSlip) => Math.abs(Math.log((REPAIR[slip] * ratio) / proportion.usual));
  return (IN_ONE_LAYER.includes(name) ? UNIT_SLIPS : GARMENT_SLIPS)
    .filter((slip) => believed(REPAIR[slip] * ratio, proportion))
    .toSorted((a, b) => strangeness(a) - strangeness(b))[0];
}

const believed = (ratio: number, { least, most }: Proportion): boolean => ratio >= least && ratio <= most;
