import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import { describe, expect, it } from 'vitest';
import { girths, innerFromFlat, outerFromInner } from '#fabric';

/**
 * J. Steiner (1840), "Über parallele Flächen": the curve parallel to a closed convex one, at distance t outside, is longer
 * by 2πt. The parallel curve is drawn by a general geometry library (jsts), not by the product.
 */

type Point = readonly [number, number];

/** The offset's round corners are chords of a circle of radius t, this many a quarter turn. */
const QUADRANT_SEGMENTS = 256;
/**
 * Chords are short of their arcs by 1 − sin(h)/h = h²/6, h half the angle of one: 1.6e-6 of 2πt. Corners that are not a whole
 * number of them, and the library's own merging of near points, take some more.
 */
const TOLERANCE = 1e-5;

const factory = new GeometryFactory();

function perimeterAndOffset(outline: readonly Point[], t: number): { inner: number; outer: number } {
  const ring = [...outline, outline[0]!].map(([x, y]) => new Coordinate(x, y));
  const shape = factory.createPolygon(ring);
  return { inner: shape.getLength(), outer: BufferOp.bufferOp(shape, t, QUADRANT_SEGMENTS).getLength() };
}

function expectSteiner(outline: readonly Point[], t: number): void {
  const { inner, outer } = perimeterAndOffset(outline, t);
  const expected = 2 * Math.PI * t;
  expect(Math.abs(outer - inner - expected)).toBeLessThan(expected * TOLERANCE);
  /** The product's relation says the same of the same curve. */
  expect(Math.abs(outerFromInner(inner, t) - outer)).toBeLessThan(expected * TOLERANCE);
}

/** An ellipse by its half axes, as a polygon of 720 corners: convex itself, so the formula holds for it exactly. */
const ellipse = (a: number, b: number): Point[] =>
  Array.from(
    { length: 720 },
    (_, i) => [a * Math.cos((i * Math.PI) / 360), b * Math.sin((i * Math.PI) / 360)] as const,
  );

const cross = ([ox, oy]: Point, [ax, ay]: Point, [bx, by]: Point) => (ax - ox) * (by - oy) - (ay - oy) * (bx - ox);

/** The convex hull of points, counter-clockwise (A. M. Andrew's monotone chain, 1979). */
function convexHull(points: readonly Point[]): Point[] {
  const sorted = points.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const chain = (along: readonly Point[]) => {
    const kept: Point[] = [];
    for (const point of along) {
      while (kept.length > 1 && cross(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

const thickness = fc.double({ min: 1, max: 20, noNaN: true });
const half = fc.double({ min: 50, max: 400, noNaN: true });
const place = fc.integer({ min: -400, max: 400 });
const polygon = fc
  .array(fc.tuple(place, place), { minLength: 3, maxLength: 40 })
  .map(convexHull)
  .filter((hull) => hull.length >= 3);

describe('outer minus inner perimeter is 2πt', () => {
  it('for circles', () => {
    fc.assert(
      fc.property(half, thickness, (r, t) => expectSteiner(ellipse(r, r), t)),
      { numRuns: 40 },
    );
  });

  it('for ellipses, as a body is nearer to', () => {
    fc.assert(
      fc.property(half, half, thickness, (a, b, t) => expectSteiner(ellipse(a, b), t)),
      { numRuns: 40 },
    );
  });

  it('for convex polygons, thin ones too', () => {
    fc.assert(
      fc.property(polygon, thickness, (outline, t) => expectSteiner(outline, t)),
      { numRuns: 100 },
    );
  });

  it('but not for an outline that is not convex: the check can fail', () => {
    const star: Point[] = [
      [0, 0],
      [100, 80],
      [200, 0],
      [120, 100],
      [200, 200],
      [100, 120],
      [0, 200],
      [80, 100],
    ];
    const { inner, outer } = perimeterAndOffset(star, 20);
    expect(outer - inner).toBeLessThan(2 * Math.PI * 20 * 0.9);
  });
});

describe('the girths of a flat garment', () => {
  /** Width 480, t = 6: F = 960, I = 960 − 4·6, M = I + 6π, O = I + 12π. */
  it('t = 6, W = 480: F 960, I 936, M 954.85, O 973.70', () => {
    const four = girths({ flatMm: 2 * 480, thicknessMm: 6 });
    expect(four.flatMm).toBe(960);
    expect(four.innerMm).toBe(936);
    expect(four.midMm).toBeCloseTo(954.85, 2);
    expect(four.outerMm).toBeCloseTo(973.7, 2);
  });

  it('agree with the drawn curve of a body that the garment closely holds', () => {
    const body = ellipse(170, 125);
    const { inner, outer } = perimeterAndOffset(body, 6);
    const four = girths({ innerMm: inner, thicknessMm: 6 });
    expect(Math.abs(four.outerMm - outer)).toBeLessThan(1e-3);
    /** Half way through the fabric runs the mid girth, which stitches ÷ gauge gives. */
    expect(Math.abs(four.midMm - perimeterAndOffset(body, 3).outer)).toBeLessThan(1e-3);
    expect(innerFromFlat(four.flatMm, 6)).toBeCloseTo(inner, 9);
  });
});
