import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  dimension,
  everyDimension,
  fabricOf,
  made,
  mm,
  PLAIN,
} from '../../../../tests/support/fit-samples.ts';
import type { PieceDimension } from '../messages/advice.ts';
import { advise } from './advise.ts';

const onPiece = (path: string, differs: Parameters<typeof adviceOn>[0]): PieceDimension =>
  dimension(adviceOn(differs), path) as PieceDimension;

describe('a dimension', () => {
  it('lies between its low and its high', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const [path, { value, low, high, u }] of everyDimension(advise(request))) {
          if (value === null) continue;
          expect(low, path).toBeLessThanOrEqual(value);
          expect(high, path).toBeGreaterThanOrEqual(value);
          expect(u, path).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('is not rounded below nothing: an overlap of 4 has no low of −6', () => {
    const { low, value, high } = dimension(
      adviceOn({ design: { silhouette: 'cardigan', overlapMm: 4 } }),
      'band-overlap',
    );
    expect([low, value, high]).toEqual([0, 4, 14]);
  });

  it('is not rounded to nothing where it is a depth: 1 of a band of 5 is left', () => {
    expect(dimension(adviceOn({ design: { bandMm: 5 } }), 'band-depth')).toMatchObject({ low: 1, value: 5, high: 15 });
  });
});

describe('as made', () => {
  const fabric = fabricOf(3, { growth: { across: 0.02, along: 0.05 } });

  /** (507.5… + 2 × 6)/1.02 over both sides; a length by 1.05, one of its ends joined. */
  it('has its seam allowances on, and what the fabric grows off', () => {
    const differs = { fabric, design: { seamAllowanceMm: 6 } };
    const width = onPiece('back/width', differs);
    expect(width.allowance).toBe(12);
    expect(width.asMade).toBeCloseTo((width.value! + 12) / 1.02, 9);
    const length = onPiece('sleeve/sleeve-length', differs);
    expect(length.allowance).toBe(6);
    expect(length.asMade).toBeCloseTo((length.value! + 6) / 1.05, 9);
  });

  it('is the value where nothing grows and nothing is added', () => {
    const width = onPiece('back/width', { design: PLAIN });
    expect(width.asMade).toBe(width.value);
  });

  /** A cardigan's fronts are joined at one side; the other carries the band. */
  it('of a half front has one allowance across', () => {
    expect(onPiece('left-front/width', { design: { silhouette: 'cardigan', seamAllowanceMm: 6 } }).allowance).toBe(6);
  });
});

describe('what follows a dimension', () => {
  /** Width W of a drop shoulder: p = W + …, so the sleeve N − p/2 goes by −½; the girth at the hem goes with it. */
  it('is told by the millimetre', () => {
    const advice = adviceOn();
    const slopes = (name: string) =>
      Object.fromEntries(dimension(advice, name).follows!.map((each) => [`${each.piece}/${each.name}`, each.slope]));
    expect(slopes('chest-width')).toMatchObject({
      'assembled/sleeve-length': -0.5,
      'assembled/hem-width': 1,
      'back/width': 1,
      'front/width': 1,
      'sleeve/underarm-seam': -0.5,
    });
    expect(slopes('chest-width')).not.toHaveProperty('assembled/chest-width');
    expect(slopes('armhole-depth')).toMatchObject({
      'assembled/sleeve-top-width': 1,
      'sleeve/sleeve-top-width': 2,
      'back/body-to-underarm': -1,
    });
  });

  it('is named with its piece, each once, in the order of the sheet', () => {
    const advice = adviceOn({ design: { construction: 'set-in' } });
    const places = everyDimension(advice).map(([path]) => path);
    for (const [path, { follows = [] }] of everyDimension(advice)) {
      const at = follows.map(({ piece, name }) => places.indexOf(piece === 'assembled' ? name : `${piece}/${name}`));
      expect(at, path).toEqual([...new Set(at)].toSorted((a, b) => a - b));
      expect(at, path).not.toContain(-1);
    }
  });

  /** A cap, a deepened armhole and a widened neck stay as they are on the sheet. */
  it('is never what was solved', () => {
    const advice = adviceOn({ design: { construction: 'set-in' } });
    const followers = (path: string) => dimension(advice, path).follows!.map(({ name }) => name);
    for (const path of ['chest-width', 'armhole-depth', 'sleeve-top-width'])
      expect(followers(path), path).not.toContain('cap-height');
    expect(followers('neck-width')).not.toContain('front-neck-depth');
    expect(followers('chest-width')).not.toContain('armhole-depth');
  });

  it('does follow: a back made d wider moves what its width says it moves', () => {
    const d = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom('drop-shoulder', 'squared-drop', 'set-in'), d, (construction, d) => {
        const design = { construction } as const;
        const planned = adviceOn({ design });
        const { value, follows } = dimension(planned, 'back/width');
        const slope = (name: string): number =>
          follows!.find((each) => each.piece === 'assembled' && each.name === name)?.slope ?? 0;
        const after = adviceOn({ design, made: [made('back/width', value! + d)] });
        // The numbers that no cap or neck was solved for.
        for (const name of ['chest-width', 'cross-back-width', 'sleeve-top-width', 'body-to-underarm'])
          expect(mm(after, name) - mm(planned, name), name).toBeCloseTo(d * slope(name), 3);
      }),
      { numRuns: 30 },
    );
  });
});
