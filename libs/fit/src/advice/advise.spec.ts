import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import { fitRequest, strangeRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  everyDimension,
  fabricOf,
  garmentOf,
  mm,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';
import { advise } from './advise.ts';
import { CONSTRUCTIONS } from '#garment';

/** The advice, or null where the request is refused as the maker can be told. */
function advisedOrRefused(request: Parameters<typeof advise>[0]): Advice | null {
  try {
    return advise(request);
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** Every number in a value, with where it stands. */
function* numbersIn(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${path}/${key}`);
}

describe('advice', () => {
  it('has no number that is none, and refuses only as a maker can be told, whatever is asked', () => {
    fc.assert(
      fc.property(fc.oneof(fitRequest, strangeRequest), (request) => {
        for (const [path, number] of numbersIn(advisedOrRefused(request)))
          if (!Number.isFinite(number)) throw new Error(`${path} is ${number}`);
      }),
      { numRuns: 300 },
    );
  });

  it('leaves its request as it was, and is the same each time', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const before = structuredClone(request);
        const once = advise(request);
        expect(request).toEqual(before);
        expect(advise(request)).toEqual(once);
      }),
      { numRuns: 60 },
    );
  });

  it('tells each dimension with its value between its ends, or with what it needs', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const [path, { value, low, high, noAdvice }] of everyDimension(advise(request))) {
          if (value === null) expect(noAdvice?.code, path).toBeTruthy();
          else expect(low! <= value && value <= high!, path).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('a sweater with', () => {
  const planned = fc.constantFrom<Differs['design']>(...CONSTRUCTIONS.map((construction) => ({ construction })));
  const more = fc.double({ min: 0.5, max: 60, noNaN: true });

  it('more ease is nowhere narrower', () => {
    fc.assert(
      fc.property(planned, fc.double({ min: -60, max: 150, noNaN: true }), more, (design, ease, by) => {
        const closer = adviceOn({ design: { ...design, ease: { mm: ease } } });
        const looser = adviceOn({ design: { ...design, ease: { mm: ease + by } } });
        for (const name of ['chest-width', 'hem-width', 'sleeve-top-width', 'cuff-width'])
          expect(mm(looser, name), name).toBeGreaterThanOrEqual(mm(closer, name));
      }),
    );
  });

  it('a thicker fabric is laid flat wider, and has the same room', () => {
    fc.assert(
      fc.property(planned, fc.double({ min: 1, max: 8, noNaN: true }), more, (design, thin, by) => {
        const [t1, t2] = [thin, thin + by / 20];
        const [one, other] = [t1, t2].map((t) => adviceOn({ design: design ?? {}, fabric: fabricOf(t) })) as [
          Advice,
          Advice,
        ];
        expect(mm(other, 'chest-width')).toBeGreaterThan(mm(one, 'chest-width'));
        expect(other.design.ease.room).toBeCloseTo(one.design.ease.room!, 6);
      }),
    );
  });

  it('the room of the one that fits keeps it in any fabric, over any layer', () => {
    const mmOf = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(planned, mmOf(400, 700), mmOf(1, 9), mmOf(1, 9), (design, width, ref, t) => {
        const garment = garmentOf({ 'chest-width': width }, { thicknessMm: ref });
        const advice = adviceOn({
          garment,
          fabric: fabricOf(t),
          design: { ...design, basis: 'garment', length: 'cropped' },
        });
        // Inner girth: twice the flat width less four thicknesses.
        const inner = (flat: number, thickness: number) => 2 * flat - 4 * thickness;
        expect(inner(mm(advice, 'chest-width'), t)).toBeCloseTo(inner(width, ref), 6);
      }),
    );
  });
});
