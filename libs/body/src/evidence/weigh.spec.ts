import { describe, expect, it } from 'vitest';
import type { Comparison } from './compare.ts';
import type { Observation } from './observation.ts';
import { weighAgainstEachOther, weighAgainstTape } from './weigh.ts';

const observation = (source: string, id: string, rest: Partial<Observation> = {}): Observation => ({
  source,
  id,
  dimensions: {},
  hidden: {},
  constant: 0,
  observed: 0,
  tau: 20,
  u: 10,
  ...rest,
});
const apart = ({ source, id }: Observation, difference: number): Comparison => ({
  source,
  id,
  expected: 0,
  difference,
  u: 10,
});
const hidden = [
  { name: 'a', mean: 75, sd: 15 },
  { name: 'b', mean: 75, sd: 15 },
];

describe('observations against the tape', () => {
  const width = observation('a', 'width', { anchors: 'a' });
  const cuff = observation('a', 'cuff');

  it('all count where none lies beyond 2u', () => {
    const weighed = weighAgainstTape(hidden, [width, cuff], [apart(width, 20), apart(cuff, -20)]);
    expect(weighed).toEqual({ hidden, observations: [width, cuff], contradictions: [] });
  });

  it('are left out beyond it, and asked about', () => {
    const weighed = weighAgainstTape(hidden, [width, cuff], [apart(width, 0), apart(cuff, -21)]);
    expect(weighed.observations).toEqual([width]);
    expect(weighed.contradictions).toEqual([{ between: 'tape', observation: apart(cuff, -21) }]);
  });

  it('stay where they anchor a hidden number, whose prior is dropped', () => {
    const weighed = weighAgainstTape(hidden, [width, cuff], [apart(width, 21), apart(cuff, 0)]);
    expect(weighed.observations).toEqual([width, cuff]);
    expect(weighed.hidden[0]!.sd).toBeGreaterThan(500);
    expect(weighed.hidden[1]).toEqual(hidden[1]);
    expect(weighed.contradictions).toHaveLength(1);
  });

  it('count and are not asked about where they are confirmed', () => {
    const sure = { ...cuff, confirmed: true };
    const weighed = weighAgainstTape(hidden, [sure], [apart(sure, 50)]);
    expect(weighed).toEqual({ hidden, observations: [sure], contradictions: [] });
  });
});

describe('observations of two sources', () => {
  const pair = (rest: Partial<Observation> = {}) => [observation('a', 'cuff', rest), observation('b', 'cuff', rest)];
  /** Each of variance 500, covariance 300: their difference has u = √(1000 − 600) = 20. */
  const innovations = (difference: number) => ({
    differences: [0, difference],
    covariance: [500, 300, 300, 500],
    across: [],
  });

  it('count as they are within 2u of one another', () => {
    const observations = pair();
    const weighed = weighAgainstEachOther(hidden, observations, innovations(39));
    expect(weighed).toEqual({ hidden, observations, contradictions: [] });
  });

  it('count for less beyond it: both τ are doubled, and it is asked which is right', () => {
    const weighed = weighAgainstEachOther(hidden, pair(), innovations(-41));
    expect(weighed.observations.map(({ tau }) => tau)).toEqual([40, 40]);
    expect(weighed.contradictions).toEqual([
      { between: 'sources', id: 'cuff', sources: ['a', 'b'], difference: -41, u: 20 },
    ]);
    expect(weighed.hidden).toEqual(hidden);
  });

  it('double the spread of the hidden numbers that they anchor', () => {
    const anchored = pair().map((one) => ({ ...one, anchors: one.source }));
    const weighed = weighAgainstEachOther(hidden, anchored, innovations(41));
    expect(weighed.hidden.map(({ sd }) => sd)).toEqual([30, 30]);
  });

  it('are not compared where they are different measures, of one source, or both confirmed', () => {
    for (const observations of [
      [observation('a', 'cuff'), observation('b', 'neck')],
      [observation('a', 'cuff'), observation('a', 'cuff')],
      pair({ confirmed: true }),
    ])
      expect(weighAgainstEachOther(hidden, observations, innovations(100)).contradictions).toEqual([]);
  });
});
