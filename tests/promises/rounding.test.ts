/**
 * What a planner may round: one dimension to any value from low to high, what follows it moved by its slope, every other number of the sheet as
 * it is. No check that passed fails then. The checks are worked out anew from the sheet's numbers, apart from the code that made it.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BodyDimension } from '#body';
import { CRAFTS, type FabricInput } from '#fabric';
import { advise, NECKLINES, SILHOUETTES, type Advice, type Follows, type FitRequest } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { numbersOf, sparesOf } from '../support/checks-on-sheet.ts';
import { bodyOf, fabricOf, requestOf } from '../support/fit-samples.ts';
import { SIZE_BODIES, SPREAD } from '../support/size-bodies.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const MEASURES = Object.keys(SPREAD) as BodyDimension[];
const orNull = <T>(some: fc.Arbitrary<T>) => fc.option(some, { freq: 3, nil: null });

const request: fc.Arbitrary<FitRequest> = fc
  .record({
    body: fc.constantFrom(...SIZE_BODIES),
    off: fc.record(Object.fromEntries(MEASURES.map((name) => [name, between(-2, 2)]))),
    craft: fc.constantFrom(...CRAFTS),
    thickness: between(1.5, 10),
    stretch: orNull(between(0, 0.6)),
    ribStretch: orNull(between(0.2, 1.2)),
    construction: fc.constantFrom(...CONSTRUCTIONS),
    silhouette: fc.constantFrom(...SILHOUETTES),
    neckline: fc.constantFrom(...NECKLINES),
    length: fc.constantFrom('cropped' as const, 'regular' as const, 'long' as const),
    hem: fc.constantFrom('straight' as const, 'tapered' as const),
    ease: fc.constantFrom('very-close' as const, 'close' as const, 'classic' as const, 'loose' as const),
    place: between(0, 1),
    layer: orNull(between(0.5, 5)),
    bandMm: orNull(between(8, 45)),
  })
  .map(({ body, off, craft, thickness, stretch, ribStretch, ease, place, layer, ...design }) => {
    const measures = Object.fromEntries(
      Object.entries(body.measures).map(([name, mm]) => {
        const z = off[name] ?? 0;
        return [name, mm * Math.exp(z * (SPREAD[name as BodyDimension] ?? 0))] as const;
      }),
    );
    const given: Partial<FabricInput> = {
      craft,
      ribStretch,
      stretch: stretch === null ? null : { across: stretch, along: stretch },
    };
    return requestOf({
      body: bodyOf(measures, body.figure),
      fabric: fabricOf(thickness, given),
      design: {
        ...design,
        ease: { category: ease, place },
        layer: layer === null ? null : { thicknessMm: layer, u: 0.3, sleeves: 'long' },
      },
    });
  });

interface Rounded {
  readonly place: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly follows: readonly Follows[];
}

function dimensionsOf({ assembled, pieces }: Advice): Rounded[] {
  const places = [{ piece: 'assembled', dimensions: assembled }, ...pieces];
  return places.flatMap(({ piece, dimensions }) =>
    dimensions.flatMap(({ name, value, low, high, follows }) =>
      value === null ? [] : [{ place: `${piece}/${name}`, value, low: low!, high: high!, follows: follows! }],
    ),
  );
}

/** Less than this is rounding, mm. */
const NOISE = 1e-6;
/** Slopes are written to six decimals. */
const SLOPE_NOISE = 1e-4;

it('works out from the numbers of a sheet what its checks say', () => {
  fc.assert(
    fc.property(request, (asked) => {
      const advice = advise(asked);
      const spares = sparesOf(asked, advice, numbersOf(advice));
      for (const { check, verdict, margin } of advice.checks) {
        const spare = spares[check];
        if (spare === undefined || verdict === 'n/a' || verdict === 'unknown') continue;
        expect(Math.abs(spare - margin!), `${check}: ${spare} for ${margin}`).toBeLessThan(NOISE);
      }
    }),
    { numRuns: 400 },
  );
});

it('keeps every check that passed, 10,000 roundings a run', () => {
  let roundings = 0;
  fc.assert(
    fc.property(request, fc.array(between(0, 1), { minLength: 40, maxLength: 40 }), (asked, places) => {
      const advice = advise(asked);
      const numbers = numbersOf(advice);
      const passed = advice.checks.filter(({ comfort, margin }) => !comfort && margin !== undefined && margin >= 0);
      const dimensions = dimensionsOf(advice);
      for (const [i, place] of places.entries()) {
        const dimension = dimensions[(i * 7 + Math.floor(place * 1e6)) % dimensions.length]!;
        const { value, low, high, follows } = dimension;
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        // The ends are tried as often as what lies between.
        const to = i % 3 === 0 ? low : i % 3 === 1 ? high : low + place * (high - low);
        const moved = new Map(numbers).set(dimension.place, to);
        for (const { piece, name, slope } of follows) {
          const other = `${piece}/${name}`;
          expect(numbers.has(other), `${dimension.place} → ${other}`).toBe(true);
          moved.set(other, numbers.get(other)! + slope * (to - value));
        }
        const spares = sparesOf(asked, advice, moved);
        roundings++;
        for (const { check } of passed) {
          const spare = spares[check];
          if (spare !== undefined)
            expect(spare, `${check} after ${dimension.place} ${value} → ${to}`).toBeGreaterThan(-SLOPE_NOISE);
        }
      }
    }),
    { numRuns: 250 },
  );
  expect(roundings).toBeGreaterThanOrEqual(10_000);
});

it('lets a band be rounded no shallower than the head passes with', () => {
  const measures = { ...SIZE_BODIES.find(({ size }) => size === 'woman M')!.measures };
  const asked = requestOf({
    body: bodyOf(measures, 'woman'),
    fabric: fabricOf(3, { stretch: { across: 0.3, along: 0.3 } }),
    design: { construction: 'set-in' },
  });
  const advice = advise(asked);
  const band = advice.pieces
    .find(({ piece }) => piece === 'neck-band')!
    .dimensions.find(({ name }) => name === 'band-depth')!;
  for (const to of [band.low!, band.high!]) {
    const moved = numbersOf(advice).set('neck-band/band-depth', to);
    for (const { piece, name, slope } of band.follows!)
      moved.set(`${piece}/${name}`, moved.get(`${piece}/${name}`)! + slope * (to - band.value!));
    expect(sparesOf(asked, advice, moved)['head-through-neck']).toBeGreaterThan(-SLOPE_NOISE);
  }
});
