import fc from 'fast-check';
import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { inMillimetres } from './in-millimetres.ts';
import type { LogGaussian, Observation } from './observation.ts';
import { updateByObservations } from './update.ts';

/** A body of two dimensions that go together. */
const body: LogGaussian = {
  names: ['chest-girth', 'hip-girth'],
  mean: [Math.log(900), Math.log(960)],
  covariance: [0.01, 0.006, 0.006, 0.008],
};
const ease = { name: 'ease', mean: 75, sd: 30 };
const observation = (rest: Partial<Observation>): Observation => ({
  id: 'width',
  source: 'sweater',
  dimensions: {},
  hidden: {},
  constant: 0,
  observed: 0,
  tau: 0,
  u: 10,
  ...rest,
});

const anyObservation = fc
  .record({
    chest: fc.double({ min: -1, max: 1, noNaN: true }),
    hip: fc.double({ min: -1, max: 1, noNaN: true }),
    ease: fc.double({ min: -1, max: 1, noNaN: true }),
    off: fc.double({ min: -80, max: 80, noNaN: true }),
    tau: fc.double({ min: 0, max: 30, noNaN: true }),
    u: fc.double({ min: 2, max: 20, noNaN: true }),
  })
  .map(({ chest, hip, ease, off, tau, u }) =>
    observation({
      dimensions: { 'chest-girth': chest, 'hip-girth': hip },
      hidden: { ease },
      observed: 900 * chest + 960 * hip + 75 * ease + off,
      tau,
      u,
    }),
  );

describe('an update by observations', () => {
  it('is the prior where there are none', () => {
    const { mean, names, covariance } = updateByObservations(body, [ease], []);
    expect(names).toEqual(['chest-girth', 'hip-girth', 'ease']);
    expect(mean).toEqual([...body.mean, 75]);
    expect(covariance).toEqual([0.01, 0.006, 0, 0.006, 0.008, 0, 0, 0, 900]);
  });

  it('lies where the density of the posterior is greatest, with the covariance of its curvature', () => {
    fc.assert(
      fc.property(fc.array(anyObservation, { minLength: 1, maxLength: 6 }), (observations) => {
        const { mean, covariance } = updateByObservations(body, [ease], observations);
        const prior = updateByObservations(body, [ease], []);
        const precision = inverse(Matrix.from1DArray(3, 3, [...prior.covariance]));
        const j = new Matrix(
          observations.map(({ dimensions, hidden }) => [
            dimensions['chest-girth']! * Math.exp(mean[0]!),
            dimensions['hip-girth']! * Math.exp(mean[1]!),
            hidden['ease'] as number,
          ]),
        );
        const weights = observations.map(({ tau, u }) => 1 / (tau ** 2 + u ** 2));
        const off = observations.map(
          ({ observed }, i) => observed - j.get(i, 0) - j.get(i, 1) - j.get(i, 2) * mean[2]!,
        );
        // The gradient of −ln density, in standard deviations of the prior.
        const away = Matrix.columnVector(mean.map((value, i) => value - prior.mean[i]!));
        const pulled = j.transpose().mmul(Matrix.columnVector(off.map((value, i) => value * weights[i]!)));
        const gradient = precision.mmul(away).sub(pulled).to1DArray();
        gradient.forEach((value, i) =>
          expect(Math.abs(value * Math.sqrt(prior.covariance[4 * i]!))).toBeLessThan(1e-4),
        );
        const curvature = precision.add(j.transpose().mmul(Matrix.diag(weights)).mmul(j));
        inverse(curvature)
          .to1DArray()
          .forEach((value, i) => {
            const [row, column] = [Math.floor(i / 3), i % 3];
            const scale = Math.sqrt(prior.covariance[4 * row]! * prior.covariance[4 * column]!);
            expect(Math.abs(covariance[i]! - value) / scale).toBeLessThan(1e-6);
          });
      }),
      { numRuns: 100 },
    );
  });

  it('takes the slope of a bent term on the side where the hidden number comes to lie', () => {
    const hem = (observed: number) =>
      observation({ dimensions: { 'hip-girth': 1 }, hidden: { ease: { at: 25, below: 1, above: 0 } }, observed });
    const chest = (observed: number) => observation({ id: 'chest', hidden: { ease: 1 }, observed, u: 1 });
    const of = (name: string, e: number) =>
      inMillimetres(updateByObservations(body, [ease], [hem(1000), chest(e)])).values[name]!.value;
    // An ease of 60 counts as 25 at the hem, one of −10 as −10.
    expect(of('hip-girth', 60)).toBeCloseTo(of('hip-girth', 90), 0);
    expect(of('hip-girth', -10)).toBeGreaterThan(of('hip-girth', 25) + 25);
    for (const e of [20, 24, 25, 25.5, 26, 30]) expect(Math.abs(of('ease', e) - e)).toBeLessThan(1);
  });

  it('asks for a prior of everything that an observation rests on', () => {
    expect(() => updateByObservations(body, [], [observation({ hidden: { ease: 1 } })])).toThrow(
      expect.objectContaining({ code: 'unknown-term', params: { name: 'ease', known: body.names } }),
    );
    expect(() => updateByObservations(body, [], [observation({ dimensions: { 'wrist-girth': 1 } })])).toThrow(
      expect.objectContaining({ code: 'unknown-term' }),
    );
  });
});
