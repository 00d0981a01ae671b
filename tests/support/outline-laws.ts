import { inUnit, type Piece, type TargetSheet } from '#target-sheet';
import { edgeLaws } from './edge-laws.ts';
import { identityLaws } from './identity-laws.ts';
import { regionLaws } from './region-laws.ts';

/** A law that does not hold, and where. */
export interface Broken {
  readonly where: string;
  readonly law: string;
}

type Point = readonly [number, number];
type Outline = readonly Point[];
type Values = (name: string) => number | undefined;

/** What two ways to one length may differ by, mm. */
const NEAR = 1e-6;
const near = (one: number, other: number): boolean => Math.abs(one - other) <= NEAR;

/** The laws of a sheet’s pieces: outlines, edges, regions and identities; see `holdsSheetLaws`. */
export function outlineLaws(sheet: TargetSheet): Broken[] {
  const { pieces, checks } = inUnit(sheet, 'mm');
  const seamIsChecked = checks.some(({ check, verdict }) => check === 'seam' && verdict !== 'n/a');
  return pieces.flatMap((piece) => {
    const { outline } = piece;
    const laws = outline ? [...simple(outline), ...extents(piece, outline)] : [];
    return [
      ...laws,
      ...edgeLaws(piece, pieces, seamIsChecked),
      ...regionLaws(piece),
      ...identityLaws(piece, pieces),
    ].map((law) => ({ where: piece.piece, law }));
  });
}

/** Three corners or more, none twice in a row, counter-clockwise, no edge touching another but its neighbours’ ends; starts at [0, 0]. */
function simple(outline: Outline): string[] {
  const laws: string[] = [];
  if (outline.length < 3) return ['has fewer than three corners'];
  const sides = outline.map((from, index) => [from, at(outline, index + 1)] as const);
  if (sides.some(([from, to]) => from[0] === to[0] && from[1] === to[1])) laws.push('has an edge of no length');
  if (!(sides.reduce((area, [[x1, y1], [x2, y2]]) => area + x1 * y2 - x2 * y1, 0) > 0))
    laws.push('is not counter-clockwise');
  for (const [index, side] of sides.entries())
    for (let other = index + 2; other < sides.length - (index === 0 ? 1 : 0); other += 1)
      if (meet(side, sides[other] ?? side)) laws.push(`crosses itself: edges ${index} and ${other}`);
  const lowest = Math.min(...outline.map(([, y]) => y));
  const left = Math.min(...outline.filter(([, y]) => near(y, lowest)).map(([x]) => x));
  if (!near(lowest, 0) || !near(left, 0)) laws.push(`has its lower left end at ${left}, ${lowest}`);
  return laws;
}

const at = (outline: Outline, index: number): Point => outline[index % outline.length] ?? [NaN, NaN];

type Side = readonly [Point, Point];
const turn = ([[ax, ay], [bx, by]]: Side, [cx, cy]: Point): number =>
  Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));

/** Whether two segments have a point in common (O’Rourke, Computational Geometry in C, section 1.5: by orientation). */
function meet(one: Side, other: Side): boolean {
  const turns = [turn(one, other[0]), turn(one, other[1]), turn(other, one[0]), turn(other, one[1])] as const;
  if (turns[0] * turns[1] < 0 && turns[2] * turns[3] < 0) return true;
  const within = ([[ax, ay], [bx, by]]: Side, [x, y]: Point): boolean =>
    x >= Math.min(ax, bx) && x <= Math.max(ax, bx) && y >= Math.min(ay, by) && y <= Math.max(ay, by);
  return (
    (turns[0] === 0 && within(one, other[0])) ||
    (turns[1] === 0 && within(one, other[1])) ||
    (turns[2] === 0 && within(other, one[0])) ||
    (turns[3] === 0 && within(other, one[1]))
  );
}

function valuesOf(piece: Piece): Values {
  const values = new Map<string, number>(
    piece.dimensions.flatMap(({ name, value }) => (value === null ? [] : [[name, value]])),
  );
  return (name) => values.get(name);
}

/** Where an outline's corners and crossings lie at a height. */
function placesAt(outline: Outline, height: number): number[] {
  return outline.flatMap(([x1, y1], index) => {
    const [x2, y2] = at(outline, index + 1);
    const here = near(y1, height) ? [x1] : [];
    const between = (y1 - height) * (y2 - height) < 0 ? [x1 + ((height - y1) / (y2 - y1)) * (x2 - x1)] : [];
    return [...here, ...between];
  });
}

/** From the leftmost of them to the rightmost. */
const widthAt = (outline: Outline, height: number): number =>
  Math.max(...placesAt(outline, height)) - Math.min(...placesAt(outline, height));

/** How high an outline goes at an x: its highest corner or crossing there. */
const topAt = (outline: Outline, x: number): number =>
  Math.max(
    ...placesAt(
      outline.map(([px, py]) => [py, px]),
      x,
    ),
  );

/**
 * The outline against the named dimensions.
 * Body: `hem-width` (else `width`) at the hem, `width` at `body-to-underarm` (from the middle to its sides); its height is
 * `shoulder-to-hem`, a raglan’s `body-to-underarm` + `raglan-depth`; `neck-width` between the high points (a half
 * front: from its high point to its front edge); `front-neck-depth` or `back-neck-depth` down to the neck at the middle
 * (a half front: at its front edge, which is `front-edge` long).
 * Sleeve: `cuff-width` at the cuff, `above-rib-width` (or the cuff’s, if that is more) at `rib-depth`, `sleeve-top-width` at `underarm-seam`,
 * `cap-top-width` (else the top’s) at the top, `sleeve-length` high. Bands: their edge wide, `band-depth` high.
 */
function extents(piece: Piece, outline: Outline): string[] {
  const value = valuesOf(piece);
  const height = Math.max(...outline.map(([, y]) => y));
  const expected: [string, number | undefined, number][] =
    piece.piece === 'sleeve'
      ? [
          ['cuff-width', value('cuff-width'), widthAt(outline, 0)],
          ...aboveRib(value, outline),
          ['sleeve-top-width', value('sleeve-top-width'), widthAt(outline, value('underarm-seam') ?? NaN)],
          ['width of its top', value('cap-top-width') ?? value('sleeve-top-width'), widthAt(outline, height)],
          ['sleeve-length', value('sleeve-length'), height],
        ]
      : piece.workedFrom === 'edge'
        ? [
            ['its edge', value('neck-edge') ?? value('front-edge') ?? value('armhole-edge'), widthAt(outline, 0)],
            ['band-depth', value('band-depth'), height],
          ]
        : bodyExtents(piece, outline, height, value);
  return expected.flatMap(([name, named, drawn]) =>
    near(named ?? NaN, drawn) ? [] : [`${name} is named ${named} and drawn ${drawn}`],
  );
}

/** Where a sleeve begins above its rib: it steps out there, unless the rib is all of it that lies below the underarm. */
function aboveRib(value: Values, outline: Outline): [string, number, number][] {
  const [rib, seam] = [value('rib-depth') ?? NaN, value('underarm-seam') ?? NaN];
  const above = value('above-rib-width');
  if (above === undefined || !(rib > 0 && rib < seam)) return [];
  const widest = Math.max(above, value('cuff-width') ?? NaN);
  return [['above-rib-width', widest, widthAt(outline, rib)]];
}

function bodyExtents(
  piece: Piece,
  outline: Outline,
  height: number,
  value: Values,
): [string, number | undefined, number][] {
  const underarm = value('body-to-underarm') ?? NaN;
  const hem = value('hem-width') ?? value('width') ?? NaN;
  const half = piece.piece.endsWith('-front');
  /** The middle of the neck: of a whole piece its centre, of a half front the edge that its band is on. */
  const middle = half ? (piece.piece === 'left-front' ? 0 : hem) : hem / 2;
  const fromMiddle = outline.filter(([, y]) => near(y, height)).map(([x]) => Math.abs(x - middle));
  const halfNeck = Math.min(...fromMiddle.filter((distance) => !near(distance, 0)));
  const neckAt = topAt(outline, middle);
  const depth = value('front-neck-depth') ?? value('back-neck-depth') ?? 0;
  const raglan = value('raglan-depth');
  return [
    ['width of its hem', hem, widthAt(outline, 0)],
    [
      'width',
      value('width'),
      (half ? 1 : 2) * Math.max(...placesAt(outline, underarm).map((x) => Math.abs(x - middle))),
    ],
    ['height', raglan === undefined ? value('shoulder-to-hem') : underarm + raglan, height],
    ['neck-width', value('neck-width'), half ? halfNeck : 2 * halfNeck],
    ['depth of its neck', depth, height - neckAt],
    ...(half ? [['front-edge', value('front-edge'), neckAt] as [string, number | undefined, number]] : []),
  ];
}
