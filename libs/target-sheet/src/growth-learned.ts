import { girths } from '#fabric';
import { resolveGarment, type Garment, type GarmentDimension, type GarmentProfile } from '#garment';
import { inUnit } from './in-unit.ts';
import type { PieceDimension } from './sheet-parts.ts';
import type { TargetSheet } from './target-sheet.ts';

/** One measure of a garment beside what was made; mm. `growth`: the share that it is larger, with its standard uncertainty. */
export interface GrowthOfMeasure {
  readonly name: GarmentDimension;
  /** Off the needles and unwashed, without its seam allowance. */
  readonly made: number;
  /** After washing and wearing, as the piece measures: of a girth half of what is between its faces, of a sleeve's all. */
  readonly measured: number;
  readonly growth: number;
  readonly u: number;
}

/** The growth of a yarn in one direction, and the measures that it was learned from. */
export interface GrowthInDirection {
  readonly growth: number;
  readonly u: number;
  readonly from: readonly GrowthOfMeasure[];
}

/** Null where nothing that was measured tells of a direction. */
export interface GrowthLearned {
  readonly across: GrowthInDirection | null;
  readonly along: GrowthInDirection | null;
}

/** What a maker's work differs from its plan, as a share of a measure (assumed). */
const MAKING_U = 0.015;

/** A measure that tells of a direction, where it stands on a piece, and how many of its flat girth the piece is round; null for what lies in one layer. */
interface Told {
  readonly name: GarmentDimension;
  readonly piece: 'back' | 'sleeve';
  readonly on: PieceDimension['name'];
  readonly round: 1 | 0.5 | null;
}

const TOLD: readonly Told[] = [
  { name: 'chest-width', piece: 'back', on: 'width', round: 0.5 },
  { name: 'hem-width', piece: 'back', on: 'hem-width', round: 0.5 },
  { name: 'sleeve-top-width', piece: 'sleeve', on: 'sleeve-top-width', round: 1 },
  { name: 'cuff-width', piece: 'sleeve', on: 'cuff-width', round: 1 },
  { name: 'shoulder-to-hem', piece: 'back', on: 'shoulder-to-hem', round: null },
  { name: 'armhole-depth', piece: 'back', on: 'armhole-depth', round: null },
  { name: 'sleeve-length', piece: 'sleeve', on: 'sleeve-length', round: null },
];

/** Edges that lie in the rib, which draws in. */
const AT_RIB: readonly GarmentDimension[] = ['hem-width', 'cuff-width'];

/**
 * What a garment tells of how its yarn grows by washing and wearing: what it measures beside what was made by its sheet. The measures of each direction are weighed by their
 * variances. Nothing is changed by it.
 *
 * @throws DomainError as `resolveGarment` does
 */
export function growthLearned(sheet: TargetSheet, garment: Garment): GrowthLearned {
  const profile = resolveGarment(garment);
  const { pieces } = inUnit(sheet, 'mm');
  const grown = TOLD.flatMap((told) => {
    const dimensions = pieces.find(({ piece }) => piece === told.piece)?.dimensions ?? [];
    const made = dimensions.find(({ name }) => name === told.on);
    const ribbed = dimensions.some(({ name, value }) => name === 'rib-depth' && value !== null && value > 0);
    if (made === undefined || (ribbed && AT_RIB.includes(told.name))) return [];
    const growth = growthOf(told, made, profile);
    return growth === null ? [] : [{ axis: made.axis, growth }];
  });
  const along = (axis: PieceDimension['axis']) =>
    weighed(grown.flatMap((one) => (one.axis === axis ? [one.growth] : [])));
  return { across: along('across'), along: along('along') };
}

function growthOf({ name, round }: Told, made: PieceDimension, garment: GarmentProfile): GrowthOfMeasure | null {
  const read = garment.values[name];
  const { value, asMade, allowance } = made;
  if (read === undefined || value === null || asMade === null || value + allowance <= 0) return null;
  if (name === 'sleeve-length' && garment.sleeveFrom !== 'seam') return null;
  const planned = (asMade * value) / (value + allowance);
  const { thicknessMm, thicknessU } = garment;
  const measured = round === null ? read.value : round * girths({ flatMm: 2 * read.value, thicknessMm }).midMm;
  if (!(planned > 0 && measured > 0)) return null;
  // M = F − (4 − π)t with F twice the width.
  const reading = round === null ? read.u : round * Math.hypot(2 * read.u, (4 - Math.PI) * thicknessU);
  const ratio = measured / planned;
  return { name, made: planned, measured, growth: ratio - 1, u: ratio * Math.hypot(MAKING_U, reading / measured) };
}

/** The mean, each weighed by the inverse of its variance. */
function weighed(from: readonly GrowthOfMeasure[]): GrowthInDirection | null {
  if (from.length === 0) return null;
  const weights = from.map(({ u }) => 1 / u ** 2);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const growth = from.reduce((sum, one, place) => sum + weights[place]! * one.growth, 0) / all;
  return { growth, u: 1 / Math.sqrt(all), from };
}
