import { describe, expect, it } from 'vitest';
import { SHEET_UNITS, inUnit, type TargetSheet } from '#target-sheet';
import { holdsSheetLaws } from '../support/sheet-laws.ts';
import { cardiganSheet, pulloverSheet, sampleSheets } from './samples/index.ts';

type Edge = TargetSheet['pieces'][number]['edges'][number];
type Change = (sheet: TargetSheet) => unknown;

/** The hand-made pullover with one thing changed on its back. */
const back =
  (change: (piece: TargetSheet['pieces'][number]) => object): Change =>
  (sheet) => ({
    ...sheet,
    pieces: sheet.pieces.map((piece) => (piece.piece === 'back' ? { ...piece, ...change(piece) } : piece)),
  });
const width = (change: object): Change =>
  back(({ dimensions }) => ({
    dimensions: dimensions.map((each) => (each.name === 'width' ? { ...each, ...change } : each)),
  }));
const inEdges = (sheet: TargetSheet, change: (piece: string, edge: Edge) => Partial<Edge>): TargetSheet => ({
  ...sheet,
  pieces: sheet.pieces.map((piece) => ({
    ...piece,
    edges: piece.edges.map((edge) => ({ ...edge, ...change(piece.piece, edge) })),
  })),
});
/** The right side of its back. */
const side =
  (more: Partial<Edge>): Change =>
  (sheet) =>
    inEdges(sheet, (piece, { edge }) => (piece === 'back' && edge === 'right-side' ? more : {}));
const outline = (change: (points: readonly (readonly [number, number])[]) => unknown): Change =>
  back((piece) => ({ outline: change(piece.outline ?? []) }));

describe('the laws of a sheet', () => {
  it('hold of the hand-made sheets in every unit', () => {
    for (const sheet of sampleSheets) for (const unit of SHEET_UNITS) holdsSheetLaws(inUnit(sheet, unit));
  });

  it.each<[string, Change, RegExp]>([
    ['a field we do not know', (sheet) => ({ ...sheet, extra: 1 }), /additional/],
    ['a field of a dimension we do not know', width({ lo: 1 }), /additional/],
    ['a name outside the lists', width({ name: 'girth' }), /allowed values/],
    ['terms that do not add up', width({ because: [{ term: 'x', value: 1, u: 0, from: 'x' }] }), /terms add up to 1/],
    ['a low above the value', width({ low: 600 }), /600 ≤/],
    ['a high below the value', width({ high: 1 }), /≤ 1/],
    ['a size as made without its growth', width({ asMade: 1 }), /as made 1/],
    ['an outline that goes round clockwise', outline((points) => points.toReversed()), /counter-clockwise/],
    ['an outline that crosses itself', outline((points) => points.with(0, [600, 300])), /crosses itself/],
    ['an outline that repeats a corner', outline(([first, ...rest]) => [first, first, ...rest]), /no length/],
    ['an outline off its origin', outline((points) => points.map(([x, y]) => [x + 1, y])), /lower left end at 1/],
    [
      'an outline wider than its width',
      outline((points) => points.map(([x, y]) => [2 * x, y])),
      /width is named 510.9/,
    ],
    [
      'an outline higher than its length',
      outline((points) => points.map(([x, y]) => [x, 2 * y])),
      /height is named 607.6/,
    ],
    [
      'an edge that is joined to one that does not say so',
      side({ joins: [{ piece: 'front', edge: 'hem' }] }),
      /joined to hem of front, which does not say so/,
    ],
    ['an edge longer than drawn', side({ length: 400 }), /right-side is 400 long, and drawn 360.4/],
    ['edges that leave a gap', side({ from: 0 }), /gap before right-side/],
    ['edges of a piece without an outline', back(() => ({ outline: undefined })), /no outline, and a hem/],
    ['a region that ends nowhere', back(() => ({ regions: [] })), /no regions/],
    ['a dimension that nothing gives', width({ defining: false }), /width is not one of/],
    [
      'an identity that does not hold',
      back(({ dimensions }) => ({
        dimensions: dimensions.map((each) => (each.name === 'width' ? { ...each, defining: false } : each)),
        identities: [{ name: 'width', equals: [{ name: 'neck-width', times: 2 }] }],
      })),
      /width is 510.9, by its identity 386.2/,
    ],
  ])('refuse %s', (_, change, complaint) => {
    expect(() => holdsSheetLaws(change(pulloverSheet) as TargetSheet)).toThrow(complaint);
  });

  it('let two made pieces differ at their seam, where the check of seams says so', () => {
    const eased = inEdges(pulloverSheet, (piece, { edge, joins }) => {
      const ease =
        piece === 'back' && edge === 'left-armhole' ? 4 : piece === 'sleeve' && edge === 'back-armhole' ? -4 : 0;
      return ease === 0
        ? {}
        : {
            ...(ease > 0 && { length: 251.2 }),
            joins: joins.map((join) => (join.mirrored ? join : { ...join, ease })),
          };
    });
    const longer = {
      ...eased,
      pieces: eased.pieces.map((each) =>
        each.piece === 'back'
          ? { ...each, outline: each.outline!.map(([x, y]) => [x, x === 0 && y > 360 && y < 361 ? 356.4 : y] as const) }
          : each,
      ),
    };
    expect(() => holdsSheetLaws(longer)).toThrow(/with an ease of 4/);
    const checks = [
      ...longer.checks.filter(({ check }) => check !== 'seam'),
      { check: 'seam' as const, unit: 'mm' as const, comfort: false, verdict: 'fine' as const, advice: '' },
    ];
    expect(() => holdsSheetLaws({ ...longer, checks })).not.toThrow(/ease/);
  });

  it('want a reason for every value that is missing', () => {
    const [neck] = cardiganSheet.assembled.filter(({ value }) => value === null);
    const { noAdvice: _, ...bare } = neck ?? { noAdvice: null };
    expect(() => holdsSheetLaws({ ...cardiganSheet, assembled: [bare] } as TargetSheet)).toThrow(/noAdvice/);
  });
});
