/**
 * A body of each published size, every measure that enters a fit. What a table lacks: of adults from the spread of a population (assumed), of
 * children and babies by the project's own rules (assumed). Lengths in mm.
 */
import { rowBodyMeasures, sizeTable, type BodyDimension, type Figure, type SizeRow } from '#body';

export interface SizeBody {
  readonly figure: Figure;
  readonly size: string;
  readonly measures: Readonly<Partial<Record<BodyDimension, number>>>;
}

/** How far one body of a size differs from another: standard deviation of the logarithm (assumed). */
export const SPREAD: Readonly<Partial<Record<BodyDimension, number>>> = {
  'chest-girth': 0.03,
  'hip-girth': 0.043,
  'scye-depth': 0.071,
  'neck-base-girth': 0.038,
  'wrist-girth': 0.04,
  'hand-girth': 0.043,
  'head-girth': 0.026,
  'shoulder-girth': 0.03,
  'scye-girth': 0.04,
  'upper-arm-girth': 0.05,
  'across-back': 0.05,
  'back-waist-length': 0.05,
  'back-hip-length': 0.04,
  'nape-to-cuff': 0.03,
  'underarm-length': 0.04,
};

const valuesOf = (row: SizeRow) => rowBodyMeasures(row).map(({ name, value }) => [name, value] as const);

/** A measure of a population: its middle at this chest, and its slope on the logarithm of the chest (assumed). */
type Middle = readonly [mm: number, slope: number];
type Lacking = Readonly<Partial<Record<BodyDimension, Middle>>>;
const LACKING: Readonly<Record<'woman' | 'man', { readonly chest: number; readonly middles: Lacking }>> = {
  woman: {
    chest: 905,
    middles: {
      'neck-base-girth': [346, 0.4],
      'wrist-girth': [151, 0.33],
      'hand-girth': [186, 0.22],
      'head-girth': [546, 0.11],
      'shoulder-girth': [1026, 0.59],
      'scye-girth': [371, 0.68],
    },
  },
  man: {
    chest: 1010,
    middles: {
      'neck-base-girth': [400, 0.4],
      'wrist-girth': [175, 0.33],
      'hand-girth': [214, 0.22],
      'head-girth': [572, 0.11],
      'shoulder-girth': [1185, 0.59],
      'scye-girth': [440, 0.68],
    },
  },
};

/** A back waist 250 above a man's hip, and a front that needs no short rows (assumed). */
function withWaists(measures: SizeBody['measures']): SizeBody['measures'] {
  const back = measures['back-waist-length'] ?? measures['back-hip-length']! - 250;
  return { ...measures, 'back-waist-length': back, 'front-waist-length': back + 10 };
}

function adults(figure: 'woman' | 'man', table: string): SizeBody[] {
  const { chest, middles } = LACKING[figure];
  return sizeTable(table).rows.map((row) => {
    const known = Object.fromEntries(valuesOf(row));
    const size = known['chest-girth']! / chest;
    const rest = Object.entries(middles).map(([name, [mm, slope]]) => [name, mm * size ** slope] as const);
    const measures = { ...Object.fromEntries(rest), ...known };
    return { figure, size: `${figure} ${row.size}`, measures: withWaists(measures) };
  });
}

/** Head girths by age in years, mm. Source: growth references, 50th percentile (from memory). */
const HEADS: Readonly<Record<number, number>> = {
  0.25: 400,
  0.5: 431,
  1: 463,
  1.5: 478,
  2: 486,
  4: 503,
  6: 511,
  8: 520,
  10: 528,
  12: 537,
  14: 547,
  16: 555,
};

function children(figure: 'child' | 'baby', table: string): SizeBody[] {
  const { rows } = sizeTable(table);
  return rows.map((row) => {
    const known = Object.fromEntries(valuesOf(row));
    const age = row.ageYears!;
    const chest = known['chest-girth']!;
    const scye = known['scye-depth']!;
    const wrist = 108 + 3.2 * age;
    return {
      figure,
      size: `${figure} ${row.size}`,
      measures: withWaists({
        'hip-girth': 1.04 * chest,
        'nape-to-cuff': known['across-back']! / 2 + known['underarm-length']! + 0.6 * scye,
        'neck-base-girth': 110 + 0.285 * chest,
        'wrist-girth': wrist,
        'hand-girth': 1.2 * wrist,
        'shoulder-girth': 1.13 * chest,
        'scye-girth': 2 * scye,
        'head-girth': HEADS[age]!,
        ...known,
      }),
    };
  });
}

export const SIZE_BODIES: readonly SizeBody[] = [
  ...adults('woman', 'craft-yarn-council-woman'),
  ...adults('man', 'craft-yarn-council-man'),
  ...children('child', 'craft-yarn-council-child'),
  ...children('baby', 'craft-yarn-council-baby'),
];
