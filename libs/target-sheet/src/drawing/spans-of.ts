import type { DimensionName, PieceName } from '#fit';
import { run, runBack, same, width, type Shape, type Span } from './span.ts';

/** Where the dimensions of a piece run on its drawing; those left out have no place of their own. */
export function spansOf(piece: PieceName, shape: Shape): Span[] {
  switch (piece) {
    case 'back':
    case 'front':
      return wholeBody(shape);
    case 'left-front':
    case 'right-front':
      return halfFront(shape);
    case 'sleeve':
      return sleeve(shape);
    case 'front-band':
    case 'neck-band':
    case 'armhole-band':
      return band(shape);
  }
}

function wholeBody(shape: Shape): Span[] {
  const { box, value } = shape;
  const middle = box.right / 2;
  const neck = value('neck-width') ?? 0;
  const shoulder = value('shoulder-width') ?? 0;
  return [
    ...widths(shape),
    ...run(shape, 'left', 'rib-depth', 0),
    ...run(shape, 'left', 'shoulder-to-hem', 0),
    ...run(shape, same(value('centre-back-length') ?? NaN, box.top) ? 'left' : 'up', 'centre-back-length', 0, middle),
    ...armhole(shape, 'right'),
    ...run(shape, 'above', 'neck-width', middle - neck / 2),
    ...run(shape, 'above', 'shoulder-width', middle - neck / 2 - shoulder),
    ...runBack(shape, 'beside', 'back-neck-depth', box.top, middle),
    ...runBack(shape, 'beside', 'front-neck-depth', box.top, middle),
  ];
}

function halfFront(shape: Shape): Span[] {
  const { box, value } = shape;
  const frontEdge = value('front-edge') ?? box.top - (value('front-neck-depth') ?? 0);
  const [centre, side] = same(edgeHeight(shape, 0), frontEdge)
    ? (['left', 'right'] as const)
    : (['right', 'left'] as const);
  const neck = value('neck-width') ?? 0;
  const shoulder = value('shoulder-width') ?? 0;
  return [
    ...widths(shape),
    ...run(shape, 'above', 'neck-width', centre === 'left' ? 0 : box.right - neck),
    ...run(shape, 'above', 'shoulder-width', centre === 'left' ? neck : box.right - neck - shoulder),
    ...run(shape, centre, 'front-edge', 0),
    ...runBack(shape, centre, 'front-neck-depth', box.top),
    ...run(shape, centre, 'shoulder-to-hem', 0),
    ...run(shape, centre, 'centre-back-length', 0),
    ...armhole(shape, side),
    ...run(shape, side, 'rib-depth', 0),
  ];
}

/** How high the outline goes at an x. */
const edgeHeight = ({ outline }: Shape, x: number): number =>
  Math.max(...outline.filter((point) => same(point[0], x)).map(([, y]) => y));

/** Whether a dimension needs no words: it is nothing, or another over again. */
export function isSaid({ value }: Shape, name: DimensionName): boolean {
  const own = value(name) ?? NaN;
  const over = SAYS[name];
  return same(own, 0) || (over !== undefined && same(own, value(over) ?? NaN));
}

/** The dimension that says another’s number where both are alike. */
const SAYS: Readonly<Partial<Record<DimensionName, DimensionName>>> = {
  'hem-width': 'width',
  'cross-back-width': 'width',
  'above-rib-width': 'cuff-width',
};

function widths(shape: Shape): Span[] {
  const underarm = shape.value('body-to-underarm') ?? shape.box.top;
  const armhole = shape.value('armhole-depth') ?? 0;
  return [
    ...width(shape, 'width', 'below', underarm),
    ...(isSaid(shape, 'hem-width') ? [] : width(shape, 'hem-width', 'below', 0)),
    ...(isSaid(shape, 'cross-back-width') ? [] : width(shape, 'cross-back-width', 'below', underarm + 0.6 * armhole)),
  ];
}

function armhole(shape: Shape, side: 'left' | 'right'): Span[] {
  const underarm = shape.value('body-to-underarm') ?? 0;
  const shoulder = underarm + (shape.value('armhole-depth') ?? 0);
  return [
    ...run(shape, side, 'body-to-underarm', 0),
    ...run(shape, side, 'armhole-depth', underarm),
    ...run(shape, side, 'raglan-depth', underarm),
    ...run(shape, side, 'shoulder-fall', shoulder),
  ];
}

function sleeve(shape: Shape): Span[] {
  const { value } = shape;
  const underarm = value('underarm-seam') ?? 0;
  return [
    ...width(shape, 'cuff-width', 'below', 0),
    ...width(shape, 'sleeve-top-width', 'above', underarm),
    ...(isSaid(shape, 'above-rib-width') ? [] : aboveRib(shape)),
    ...width(shape, 'cap-top-width', 'above', shape.box.top),
    ...run(shape, 'left', 'rib-depth', 0),
    ...run(shape, 'left', 'sleeve-length', 0),
    ...run(shape, 'right', 'underarm-seam', 0),
    ...run(shape, 'right', 'cap-height', underarm),
    ...run(shape, 'right', 'sleeve-raglan-depth', underarm),
  ];
}

/** The width that a sleeve begins with above its rib: its words stand above the line, clear of the rib. */
function aboveRib(shape: Shape): Span[] {
  const spans = width(shape, 'above-rib-width', 'below', shape.value('rib-depth') ?? 0);
  return spans.map((span) => (span.side === 'across' ? { ...span, side: 'over' } : span));
}

/** A band is a strip: its length and its depth, whichever way it lies. */
function band(shape: Shape): Span[] {
  const { right, top } = shape.box;
  const names = ['neck-edge', 'armhole-edge', 'front-edge', 'band-depth'] as const;
  return names.flatMap((name) => {
    const value = shape.value(name) ?? NaN;
    return same(value, right) ? run(shape, 'below', name, 0) : same(value, top) ? run(shape, 'right', name, 0) : [];
  });
}
