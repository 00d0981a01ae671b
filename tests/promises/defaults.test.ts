/** A design left to its defaults fails no check, on any body: what is advised goes on and stays on. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CRAFTS, type Craft } from '#fabric';
import { SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { adviceOn, bodyOf, fabricOf } from '../support/fit-samples.ts';
import { SIZE_BODIES, SPREAD, type SizeBody } from '../support/size-bodies.ts';
import type { BodyDimension } from '#body';

const U = [0, 5, 10] as const;
const MEASURES = Object.keys(SPREAD) as BodyDimension[];
const us = (u: number) => Object.fromEntries([...MEASURES, 'front-waist-length'].map((name) => [name, u]));

const failing = (checks: ReturnType<typeof adviceOn>['checks'], ...verdicts: string[]) =>
  checks
    .filter(({ verdict }) => verdicts.includes(verdict))
    .map(({ check, verdict, margin }) => ({ check, verdict, margin }));

/** A size's body, each measure off by its own spread: within three standard deviations, as a normal draw is. */
const anyone: fc.Arbitrary<SizeBody> = fc
  .tuple(
    fc.constantFrom(...SIZE_BODIES),
    fc.record(
      Object.fromEntries(
        MEASURES.map((name) => [
          name,
          fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
        ]),
      ),
    ),
  )
  .map(([{ measures, ...body }, draws]) => ({
    ...body,
    measures: Object.fromEntries(
      Object.entries(measures).map(([name, mm]) => {
        // Three uniform draws on −1 … 1 have a standard deviation of 1.
        const z = (draws[name] ?? []).reduce((sum, each) => sum + each, 0);
        return [name, mm * Math.exp(z * (SPREAD[name as BodyDimension] ?? 0))] as const;
      }),
    ),
  }));

const design = {
  craft: fc.constantFrom(...CRAFTS),
  thickness: fc.double({ min: 1.5, max: 10, noNaN: true }),
  construction: fc.constantFrom(...CONSTRUCTIONS),
  silhouette: fc.constantFrom(...SILHOUETTES),
  u: fc.constantFrom(...U),
};

it('fails no check on any body', () => {
  fc.assert(
    fc.property(fc.record({ body: anyone, ...design }), ({ body, craft, thickness, construction, silhouette, u }) => {
      const advice = adviceOn({
        body: bodyOf(body.measures, body.figure, us(u)),
        fabric: fabricOf(thickness, { craft }),
        design: { construction, silhouette },
      });
      expect(failing(advice.checks, 'fails', 'unknown')).toEqual([]);
    }),
    { numRuns: 2500 },
  );
});

describe.each(SIZE_BODIES.map((body) => [body.size, body] as const))('%s', (_, body) => {
  it.each(CONSTRUCTIONS)(
    '%s: no check is poor either, but the taper of a 5X drop shoulder in thick crochet',
    (construction) => {
      for (const craft of CRAFTS)
        for (const thickness of [1.5, 2, 3, 4, 6, 8, 10]) {
          const advice = adviceOn({
            body: bodyOf(body.measures, body.figure, us(0)),
            fabric: fabricOf(thickness, { craft }),
            design: { construction },
          });
          const found = failing(advice.checks, 'fails', 'unknown', 'poor').filter(
            ({ check }) => !(check === 'sleeve-taper' && isThickDropOf5X(body.size, construction, craft)),
          );
          expect(found, `${craft} ${thickness}`).toEqual([]);
          for (const piece of advice.pieces) expect(piece.outline, piece.piece).toBeDefined();
          for (const each of [...advice.assembled, ...advice.pieces.flatMap(({ dimensions }) => dimensions)])
            expect(each.value, each.name).toBeGreaterThanOrEqual(0);
        }
    },
  );
});

const isThickDropOf5X = (size: string, construction: string, craft: Craft): boolean =>
  size === 'woman 5X' && construction.includes('drop') && craft === 'crochet';
