import type { Join, PieceName } from './advice.ts';
import { crossesItself } from './crossing-path.ts';
import type { Point } from './point.ts';
import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

/** A piece drawn: its outline, and the edges that are joined to others, with their lengths. */
export interface Drawn {
  readonly outline: readonly Point[];
  readonly joins: readonly Join[];
}

/** Less than this is no length to draw, mm. */
const LEAST = 1e-3;

/** Straight pieces that a neck's curve is drawn with, over a quarter of an ellipse. */
const CURVE_STEPS = 12;

/** Places on a quarter of a circle of radius 1, from its right end to its lowest point. */
const QUARTER: readonly Point[] = Array.from({ length: CURVE_STEPS + 1 }, (_, k): Point => {
  const angle = (Math.PI / 2) * (k / CURVE_STEPS);
  return [Math.cos(angle), Math.sin(angle)];
});

const distance = (a: Point, b: Point): number => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);

const lengthOf = (path: readonly Point[]): number => {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance(path[i - 1]!, path[i]!);
  return sum;
};

const mirrored = (path: readonly Point[], about: number): Point[] =>
  path.map((point): Point => [2 * about - point[0], point[1]]).reverse();

/** Drops points that repeat the one before, and the last where it repeats the first. */
function clean(path: readonly Point[]): Point[] {
  const same = (a: Point, b: Point): boolean => distance(a, b) < 1e-9;
  const kept = path.filter((point, i) => i === 0 || !same(point, path[i - 1]!));
  if (kept.length > 1 && same(kept[0]!, kept[kept.length - 1]!)) kept.pop();
  return kept;
}

/** Whether a path is the right half of a shape: it keeps to the right of the middle and does not cross itself. */
function makesHalf(path: readonly Point[], middle: number): boolean {
  return path.every((point) => point[0] >= middle - 1e-9) && !crossesItself(clean(path));
}

/** Right half of a neck, from its high point down to the middle: a quarter ellipse, or a V's straight side. */
function rightNeck(middle: number, half: number, top: number, depth: number, straight: boolean): Point[] {
  if (straight)
    return [
      [middle + half, top],
      [middle, top - depth],
    ];
  return QUARTER.map((place): Point => [middle + half * place[0], top - depth * place[1]]);
}

/** From the underarm's corner up to the shoulder's tip, on the right. `side` is the corner's x. */
function rightArmhole(v: Row, d: Decisions, side: number, edge: number): Point[] {
  const underarm = v[S.pieceBodyToUnderarm]!;
  const tip = underarm + v[S.pieceArmhole]!;
  if (d.construction !== 'set-in')
    return [
      [side, underarm],
      [edge, underarm],
      [edge, tip],
    ];
  const rise = Math.min(d.rules['armhole-curve-share'] * v[S.armhole]!, d.rules['armhole-curve-most']);
  return [
    [side, underarm],
    [side - v[S.pieceBindOff]!, underarm],
    [edge, underarm + rise],
    [edge, tip],
  ];
}

/** Right side of a body piece from the hem's corner to the neck's middle. `middle` is the piece's centre line. */
function rightBody(
  v: Row,
  d: Decisions,
  middle: number,
  half: { readonly hem: number; readonly panel: number; readonly edge: number; readonly neck: number },
  neckDepth: number,
  neckStraight: boolean,
): { readonly path: Point[]; readonly side: number; readonly armhole: number; readonly shoulder: number } {
  const corner: Point = [middle + half.hem, 0];
  if (d.construction === 'raglan') {
    const underarm = v[S.pieceBodyToUnderarm]!;
    const top = v[S.pieceLength]!;
    const armhole: Point[] = [
      [middle + half.panel, underarm],
      [middle + half.panel - v[S.pieceBindOff]!, underarm],
      [middle + half.neck, top],
    ];
    const neck: Point[] =
      neckDepth > LEAST ? rightNeck(middle, half.neck, top, neckDepth, neckStraight) : [[middle, top]];
    return {
      path: [corner].concat(armhole, neck),
      side: lengthOf([corner, armhole[0]!]),
      armhole: lengthOf(armhole),
      shoulder: 0,
    };
  }
  const armhole = rightArmhole(v, d, middle + half.panel, middle + half.edge);
  const high: Point = [middle + half.neck, v[S.shoulderToHem]!];
  const neck = rightNeck(middle, half.neck, v[S.shoulderToHem]!, neckDepth, neckStraight);
  return {
    path: [corner].concat(armhole, [high], neck),
    side: lengthOf([corner, armhole[0]!]),
    armhole: lengthOf(armhole),
    shoulder: lengthOf([armhole[armhole.length - 1]!, high]),
  };
}

const BODY_EDGES = {
  left: { side: 'left side', shoulder: 'left shoulder', armhole: 'left armhole' },
  right: { side: 'right side', shoulder: 'right shoulder', armhole: 'right armhole' },
} as const;

function bodyJoins(
  edges: { side: number; armhole: number; shoulder: number },
  withs: { readonly left: PieceName; readonly right: PieceName },
  d: Decisions,
  sides: readonly ('left' | 'right')[],
): Join[] {
  const joins: Join[] = [];
  for (const side of sides) {
    const names = BODY_EDGES[side];
    joins.push({ edge: names.side, with: withs[side], length: edges.side });
    if (edges.shoulder > 0) joins.push({ edge: names.shoulder, with: withs[side], length: edges.shoulder });
    if (d.silhouette !== 'vest') joins.push({ edge: names.armhole, with: 'sleeve', length: edges.armhole });
  }
  return joins;
}

function wholeBody(v: Row, d: Decisions, piece: 'back' | 'front'): Drawn | null {
  const back = piece === 'back';
  const hem = v[back ? S.backHem : S.frontWholeHem]!;
  const middle = hem / 2;
  const raglan = d.construction === 'raglan';
  const depth = raglan ? (back ? 0 : v[S.raglanFrontNeck]!) : v[back ? S.pieceBackNeck : S.pieceFrontNeck]!;
  const half = {
    hem: middle,
    panel: v[back ? S.backPanel : S.frontWholePanel]! / 2,
    edge: v[back ? S.backWidth : S.frontWidth]! / 2,
    neck: v[raglan ? S.raglanNeck : S.pieceNeckWidth]! / 2,
  };
  const right = rightBody(v, d, middle, half, depth, !back && d.neckline === 'v');
  if (!makesHalf(right.path, middle)) return null;
  const outline = clean(right.path.concat(mirrored(right.path, middle)));
  const opened = d.silhouette === 'cardigan';
  const withs = back
    ? {
        left: opened ? ('left-front' as const) : ('front' as const),
        right: opened ? ('right-front' as const) : ('front' as const),
      }
    : { left: 'back' as const, right: 'back' as const };
  return { outline, joins: bodyJoins(right, withs, d, ['left', 'right']) };
}

/** A left front lies with its front edge on the left, its side on the right; a right front is its mirror image. */
function halfFront(v: Row, d: Decisions, piece: 'left-front' | 'right-front'): Drawn | null {
  const raglan = d.construction === 'raglan';
  const toEdge = v[S.frontPanel]! - v[S.frontWholePanel]! / 2;
  const half = {
    hem: v[S.frontHem]!,
    panel: v[S.frontPanel]!,
    edge: v[S.frontWidth]! / 2 + toEdge,
    neck: v[S.frontHalfNeck]!,
  };
  const depth = v[raglan ? S.raglanFrontNeck : S.pieceFrontNeck]!;
  const right = rightBody(v, d, 0, half, depth, d.neckline === 'v');
  if (!makesHalf(right.path, 0)) return null;
  const left = piece === 'left-front';
  const path = clean([[0, 0], ...right.path]);
  const outline = left ? path : clean(mirrored(path, half.hem / 2));
  const side = left ? 'left' : 'right';
  const joins = bodyJoins(right, { left: 'back', right: 'back' }, d, [side]);
  return { outline, joins: [...joins, { edge: 'front edge', with: 'front-band', length: v[S.frontEdge]! }] };
}

function sleeve(v: Row, d: Decisions): Drawn | null {
  const middle = v[S.cuff]! / 2;
  const half = v[S.sleeveTop]! / 2;
  const top = v[S.sleeve]!;
  const underarm = v[S.underarmSeam]!;
  const corner: Point = [v[S.cuff]!, 0];
  const cap = d.construction === 'set-in' || d.construction === 'raglan';
  const above: Point[] = cap
    ? [
        [middle + half, underarm],
        [middle + half - v[S.bindOff]!, underarm],
        [middle + v[S.capTop]! / 2, top],
        [middle, top],
      ]
    : [
        [middle + half, underarm],
        [middle + half, top],
        [middle, top],
      ];
  if (!makesHalf([corner, ...above], middle)) return null;
  const joined = d.construction === 'raglan' ? above.slice(0, 3) : above;
  const outline = clean([corner, ...above, ...mirrored(above, middle), [0, 0]]);
  const edge = lengthOf(joined);
  const fronts: PieceName = d.silhouette === 'cardigan' ? 'left-front' : 'front';
  return {
    outline: [...outline.slice(-1), ...outline.slice(0, -1)],
    joins: [
      { edge: 'back armhole edge', with: 'back', length: edge },
      { edge: 'front armhole edge', with: fronts, length: edge },
      { edge: 'underarm', with: 'sleeve', length: lengthOf([corner, above[0]!]) },
    ],
  };
}

function strip(width: number, height: number, joins: readonly Join[]): Drawn {
  return {
    outline: [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    joins,
  };
}

/** Whether a piece makes a shape at all: its sides, shoulders and seams are there, and its neck ends above its lower edge. */
function drawable(v: Row, d: Decisions, piece: PieceName): boolean {
  const there = (...slots: readonly number[]): boolean => slots.every((slot) => v[slot]! > LEAST);
  switch (piece) {
    case 'sleeve': {
      const cap = d.construction === 'set-in' ? [S.cap, S.capTop] : d.construction === 'raglan' ? [S.sleeveRaglan] : [];
      return there(S.cuff, S.sleeveTop, S.underarmSeam, ...cap);
    }
    case 'neck-band':
      return there(S.neckEdge, S.band);
    case 'front-band':
      return there(S.frontEdge, S.frontBand);
    case 'back':
    case 'front':
      return drawableBody(v, d, piece) && there(piece === 'back' ? S.backHem : S.frontWholeHem);
    case 'left-front':
    case 'right-front':
      return drawableBody(v, d, piece) && there(S.frontHem, S.frontHalfNeck, S.frontEdge);
  }
}

function drawableBody(v: Row, d: Decisions, piece: PieceName): boolean {
  if (!(v[S.pieceBodyToUnderarm]! > LEAST && v[S.pieceNeckWidth]! > LEAST)) return false;
  if (d.construction !== 'raglan') {
    const depth = v[piece === 'back' ? S.pieceBackNeck : S.pieceFrontNeck]!;
    const shoulder = v[piece === 'back' ? S.backShoulder : S.frontShoulder]!;
    return shoulder > LEAST && v[S.pieceArmhole]! > LEAST && depth >= 0 && depth < v[S.shoulderToHem]!;
  }
  const depth = piece === 'back' ? 0 : v[S.raglanFrontNeck]!;
  return v[S.raglanRun]! > LEAST && v[S.pieceRaglan]! > LEAST && depth < v[S.pieceLength]!;
}

/** Draws a piece from the worked-out numbers; null where a number it needs is not known or makes no shape. */
export function drawPiece(piece: PieceName, v: Row, d: Decisions): Drawn | null {
  if (!drawable(v, d, piece)) return null;
  const drawn = drawAny(piece, v, d);
  return drawn?.outline.every((point) => Number.isFinite(point[0]) && Number.isFinite(point[1])) ? drawn : null;
}

function drawAny(piece: PieceName, v: Row, d: Decisions): Drawn | null {
  switch (piece) {
    case 'back':
    case 'front':
      return wholeBody(v, d, piece);
    case 'left-front':
    case 'right-front':
      return halfFront(v, d, piece);
    case 'sleeve':
      return sleeve(v, d);
    case 'front-band':
      return strip(v[S.frontEdge]!, v[S.frontBand]!, [
        { edge: 'front edge', with: 'left-front', length: v[S.frontEdge]! },
      ]);
    case 'neck-band':
      return strip(v[S.neckEdge]!, v[S.band]!, []);
  }
}
