import { MM_PER_UNIT } from '#measure';
import type { PieceDimension, SheetDesign, Term } from './sheet-parts.ts';
import type { AnyDimension, SheetUnit, TargetSheet } from './target-sheet.ts';

/** Millimetres in one of a sheet's units (exact by definition). */
export const MM_PER_SHEET_UNIT: Readonly<Record<SheetUnit, number>> = {
  mm: MM_PER_UNIT.mm,
  cm: MM_PER_UNIT.cm,
  in: MM_PER_UNIT['[in_i]'],
};

type Convert = (length: number) => number;

/**
 * The same sheet with every length in another unit, unrounded. Fractions (stretch, growth), chances, `follows` and the
 * checks that compare ratios stay as they are; so does what a remedy changes, which is a field of the design, and so do the
 * parameters of texts, whose lengths are in mm.
 */
export function inUnit(sheet: TargetSheet, unit: SheetUnit): TargetSheet {
  if (sheet.unit === unit) return sheet;
  const convert: Convert = (length) => (length * MM_PER_SHEET_UNIT[sheet.unit]) / MM_PER_SHEET_UNIT[unit];
  return {
    ...sheet,
    unit,
    design: {
      ...sheet.design,
      opening: { ...sheet.design.opening, length: convert(sheet.design.opening.length) },
      ease: easeIn(sheet.design.ease, convert),
    },
    fabric: { ...sheet.fabric, ...converted(sheet.fabric, ['thickness', 'u'], convert) },
    assembled: sheet.assembled.map((dimension) => dimensionIn(dimension, convert)),
    pieces: sheet.pieces.map((piece) => ({
      ...piece,
      ...(piece.outline && { outline: piece.outline.map(([x, y]) => [convert(x), convert(y)] as const) }),
      edges: piece.edges.map((edge) => ({
        ...edge,
        length: convert(edge.length),
        joins: edge.joins.map((join) => ({ ...join, ...converted(join, ['open', 'ease'], convert) })),
      })),
      regions: piece.regions.map((region) => ({
        ...region,
        ...converted(region, ['from', 'to', 'width', 'startsAt'], convert),
      })),
      identities: piece.identities.map((identity) => ({ ...identity, ...converted(identity, ['plus'], convert) })),
      dimensions: piece.dimensions.map((dimension) => pieceDimensionIn(dimension, convert)),
    })),
    checks: sheet.checks.map((check) =>
      check.unit === '1' ? check : { ...check, unit, ...converted(check, ['need', 'have', 'margin', 'u'], convert) },
    ),
  };
}

const easeIn = (ease: SheetDesign['ease'], convert: Convert): SheetDesign['ease'] => ({
  ...ease,
  ...converted(ease, ['chosen', 'tableTerms', 'flat', 'room'], convert),
});

const termIn = (term: Term, convert: Convert): Term => ({ ...term, ...converted(term, ['value', 'u'], convert) });

const dimensionIn = <D extends AnyDimension>(dimension: D, convert: Convert): D => ({
  ...dimension,
  ...converted(dimension, ['value', 'u', 'low', 'high'], convert),
  because: dimension.because.map((each) => termIn(each, convert)),
});

const pieceDimensionIn = (dimension: PieceDimension, convert: Convert): PieceDimension => ({
  ...dimensionIn(dimension, convert),
  ...converted(dimension, ['allowance', 'asMade'], convert),
});

/** The named fields that hold a number, converted; null and absent ones are left out, to stay what they are. */
function converted<T extends object, K extends keyof T>(from: T, names: readonly K[], convert: Convert): Partial<T> {
  const lengths = names.flatMap((name) => {
    const length: unknown = from[name];
    return typeof length === 'number' ? [[name, convert(length)] as const] : [];
  });
  return Object.fromEntries(lengths) as Partial<T>;
}
