import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import { V_NECK } from '../../../tests/support/counted-samples.ts';
import type { Counts } from './counts.ts';
import { countsOf } from './counts-of.ts';
import type { CountsRequest } from './counts-request.ts';

const HUNDRED = 100 / 25.4;
const gauge = (stitches: number, rows: number) => ({ stitches, rows, over: 4 });
const PLAIN: CountsRequest = {
  gauge: { main: gauge(11, 9), rib: null },
  multiple: { main: null, rib: null },
  parity: null,
  evenRows: false,
};
const counted = (more: Partial<CountsRequest> = {}): Counts => countsOf(V_NECK, { ...PLAIN, ...more }, HUNDRED);
const dimension = (counts: Counts, place: string) => {
  const [piece, name] = place.split('/');
  return counts.pieces.find((each) => each.piece === piece)!.dimensions.find((each) => each.name === name)!;
};
const countOf = (counts: Counts, place: string): number => dimension(counts, place).count;
function refusal(more: Partial<CountsRequest>): { code: string; pointer: string; params: object } {
  try {
    counted(more);
  } catch (error) {
    if (error instanceof DomainError) return { code: error.code, pointer: error.pointer, params: error.params };
    throw error;
  }
  throw new Error('It was taken.');
}

describe('counts', () => {
  it('begin a piece with a multiple, an odd or an even number where that is asked', () => {
    expect(countOf(counted({ multiple: { main: [6, 2], rib: null } }), 'back/width') % 6).toBe(2);
    for (const parity of ['odd', 'even'] as const) {
      const counts = counted({ parity });
      for (const place of ['back/width', 'front/neck-width', 'sleeve/cuff-width'])
        expect(countOf(counts, place) % 2, `${parity} ${place}`).toBe(parity === 'odd' ? 1 : 0);
    }
  });

  it('have even rows where that is asked, and the band a multiple of its own', () => {
    const counts = counted({ evenRows: true, multiple: { main: null, rib: [4, 0] } });
    for (const { dimensions } of counts.pieces)
      for (const { axis, count, name } of dimensions) if (axis === 'along') expect(count % 2, name).toBe(0);
    const { pickUp } = counts.pieces.find(({ piece }) => piece === 'neck-band')!;
    expect(pickUp.reduce((sum, { stitches }) => sum + stitches, 0) % 4).toBe(0);
  });

  /** 2 in of rib at 12 rows to 4 in are 6 rows; 9 in to the underarm leave 7 in, which are 15.75 rows of the main fabric. */
  it('count a rib of its own gauge in its own rows', () => {
    const counts = counted({ gauge: { main: gauge(11, 9), rib: gauge(14, 12) } });
    expect(countOf(counts, 'back/rib-depth')).toBe(6);
    expect(countOf(counts, 'back/body-to-underarm')).toBe(6 + 16);
    expect(dimension(counts, 'back/body-to-underarm').measures).toBeCloseTo(2 + 16 * (4 / 9), 9);
    expect(counts.pieces[0]!.regions.map(({ region, rows }) => [region, rows])).toEqual([
      ['rib', 6],
      ['body', countOf(counts, 'back/shoulder-to-hem') - 6],
    ]);
  });

  it('name the dimensions whose range holds no count', () => {
    const counts = counted({ gauge: { main: gauge(2, 9), rib: null } });
    expect(counts.outside).toContainEqual(
      expect.objectContaining({ piece: 'back', name: 'width', reason: 'no-count', low: 16.6, high: 17.4 }),
    );
    for (const { low, high, measures } of counts.outside) expect(measures < low || measures > high).toBe(true);
  });

  it('are refused for what cannot be counted in, with the field to blame', () => {
    const at = (stitches: number, rows: number, over = 4) => ({ gauge: { main: { stitches, rows, over }, rib: null } });
    for (const wrong of [at(0, 9), at(1e9, 9), at(NaN, 9), at(11, 9, 0)])
      expect(refusal(wrong)).toMatchObject({ code: 'gauge-out-of-range', pointer: '/gauge/main/stitches' });
    expect(refusal(at(11, 0))).toMatchObject({ code: 'gauge-out-of-range', pointer: '/gauge/main/rows' });
    const of = (main: readonly [number, number]) => ({ multiple: { main, rib: null } });
    expect(refusal(of([0, 2]))).toMatchObject({ code: 'multiple-unusable', pointer: '/multiple/main' });
    expect(refusal(of([200, 0]))).toMatchObject({
      code: 'multiple-larger-than-piece',
      params: { piece: 'back', name: 'width', stitches: 47 },
    });
    expect(refusal({ ...of([6, 2]), parity: 'odd' })).toMatchObject({
      code: 'counts-close-nowhere',
      params: { piece: 'back', name: 'width' },
    });
  });
});

const anyRequest: fc.Arbitrary<CountsRequest> = fc.record({
  gauge: fc.record({
    main: fc.tuple(fc.integer({ min: 7, max: 33 }), fc.integer({ min: 9, max: 42 })).map(([a, b]) => gauge(a, b)),
    rib: fc.option(
      fc.tuple(fc.integer({ min: 7, max: 36 }), fc.integer({ min: 9, max: 42 })).map(([a, b]) => gauge(a, b)),
    ),
  }),
  multiple: fc.record({
    main: fc.option(fc.constantFrom([2, 1] as const, [4, 2] as const, [6, 2] as const)),
    rib: fc.option(fc.constantFrom([2, 0] as const, [4, 2] as const)),
  }),
  parity: fc.constant(null),
  evenRows: fc.boolean(),
});

describe('whatever the gauge', () => {
  it('the identities hold in stitches, and what is within is within', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        let counts: Counts;
        try {
          counts = counted(request);
        } catch (error) {
          expect((error as DomainError).code).toBe('counts-close-nowhere');
          return;
        }
        for (const piece of ['back', 'front']) {
          const of = (name: string): number => countOf(counts, `${piece}/${name}`);
          expect(of('width')).toBe(of('neck-width') + 2 * of('shoulder-width'));
          expect(of('shoulder-to-hem')).toBe(of('body-to-underarm') + of('armhole-depth'));
          expect(of('armhole-inset')).toBe(0);
          expect(of('width')).toBe(countOf(counts, 'back/width'));
        }
        const outside = new Set(counts.outside.map(({ piece, name }) => `${piece}/${name}`));
        for (const { piece, dimensions } of counts.pieces)
          for (const { name, measures, low, high, within } of dimensions) {
            expect(outside.has(`${piece}/${name}`)).toBe(!within);
            if (within) expect(measures >= low! - 1e-6 && measures <= high! + 1e-6, name).toBe(true);
          }
      }),
    );
  });

  it('the outline keeps within half a stitch and one row a side, where nothing else is asked', () => {
    fc.assert(
      fc.property(anyRequest, ({ gauge: { main } }) => {
        const counts = counted({ gauge: { main, rib: null } });
        const [stitch, row] = [main.over / main.stitches, main.over / main.rows];
        for (const [index, { outline, regions }] of counts.pieces.entries()) {
          if (regions.every(({ fabric }) => fabric === 'rib')) continue;
          const drawn = V_NECK.pieces[index]!.outline!;
          const middles = [drawn, outline!].map((points) => (points[0]![0] + points[1]![0]) / 2);
          for (const [at, [x, y]] of outline!.entries()) {
            expect(Math.abs(x - middles[1]! - (drawn[at]![0] - middles[0]!))).toBeLessThanOrEqual(stitch / 2 + 1e-9);
            expect(Math.abs(y - drawn[at]![1])).toBeLessThanOrEqual(row + 1e-9);
          }
        }
      }),
    );
  });
});
