import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CRAFTS, type FabricInput } from './fabric.ts';
import { EXPECTED_THICKNESS_SOURCE } from './expected-thickness.ts';
import { FIBRES } from './fibre.ts';
import { STITCHES } from './stitch.ts';
import { fabricProblems } from './fabric-problems.ts';
import { resolveFabric } from './resolve-fabric.ts';

const NOTHING: FabricInput = {
  craft: 'knit',
  stitch: null,
  thicknessMm: null,
  thicknessU: null,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
};
const knit = (known: Partial<FabricInput>) => resolveFabric({ ...NOTHING, ...known });
const crochet = (known: Partial<FabricInput>) => knit({ craft: 'crochet', ...known });
const codes = (fabric: { notes: readonly { code: string }[] }) => fabric.notes.map(({ code }) => code);

const STILL = { across: 0, along: 0 };
const YARN = { wrapsPerInch: 10, metresPer100g: 200, fibre: 'wool', weightCategory: 4 } as const;

describe('the thickness', () => {
  it('is the measured one before all others, with u 0.3 where none is given', () => {
    expect(knit({ thicknessMm: 3.2, ...YARN })).toMatchObject({ thicknessMm: 3.2, thicknessU: 0.3, from: 'measured' });
    expect(knit({ thicknessMm: 3.2, thicknessU: 0.1 }).thicknessU).toBe(0.1);
  });

  /** 1.29 × 25.4/10 = 3.2766; a quarter of it is 0.81915. */
  it('comes from wraps next', () => {
    const fabric = knit(YARN);
    expect(fabric).toMatchObject({
      from: 'yarn',
      source: { code: 'wraps', params: { wrapsPerInch: 10, stitch: 'stockinette' } },
    });
    expect(fabric.thicknessMm).toBeCloseTo(3.2766, 9);
    expect(fabric.thicknessU).toBeCloseTo(0.81915, 9);
    expect(codes(fabric)).toContain('thickness-from-yarn');
  });

  /** 1.81 × 2.5 × 0.0357 √(500/(0.65 × 1.31)) = 4.525 × 0.86510 = 3.91456. */
  it('comes from metres per 100 g with the fibre next', () => {
    const fabric = crochet({ ...YARN, wrapsPerInch: null });
    expect(fabric).toMatchObject({
      from: 'yarn',
      source: { code: 'yarn-length', params: { metresPer100g: 200, fibre: 'wool', stitch: 'single-crochet' } },
    });
    expect(fabric.thicknessMm).toBeCloseTo(3.9146, 3);
  });

  it.each([
    ['knit', 4, 3, 0.5],
    ['crochet', 4, 4.25, 0.75],
    ['knit', 2, 2.15, 0.35],
    ['crochet', 6, 9, 2],
  ] as const)(
    'of %s in weight %d is the middle of the table’s range, u half the range',
    (craft, weightCategory, t, u) => {
      const fabric = knit({ craft, weightCategory });
      expect(fabric.from).toBe('category');
      expect(fabric.thicknessMm).toBeCloseTo(t, 9);
      expect(fabric.thicknessU).toBeCloseTo(u, 9);
    },
  );

  it('says where a category’s range is assumed', () => {
    const note = knit({ weightCategory: 0 }).notes.find(({ code }) => code === 'thickness-from-category');
    expect(note).toMatchObject({
      source: { code: 'assumed' },
      params: { assumed: true, yarn: { params: { category: 0, name: 'lace' } } },
    });
  });

  it('needs the fibre with the metres', () => {
    expect(knit({ metresPer100g: 200, weightCategory: 4 }).from).toBe('category');
    expect(() => knit({ metresPer100g: 200 })).toThrow(
      expect.objectContaining({ code: 'thickness-unknown', params: { fibreMissing: true } }),
    );
  });

  it('asks for something when nothing is known of it', () => {
    expect(() => knit({ fibre: 'wool', stretch: { across: 0.2, along: 0.1 } })).toThrow(
      expect.objectContaining({
        code: 'thickness-unknown',
        pointer: '/thicknessMm',
        params: { fibreMissing: false },
      }),
    );
  });

  it('grows with thicker yarn and from knit to crochet, whichever way it is found', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CRAFTS),
        fc.integer({ min: 1, max: 60 }),
        fc.constantFrom(...FIBRES),
        (craft, n, fibre) => {
          const wraps = (wrapsPerInch: number) => knit({ craft, wrapsPerInch }).thicknessMm;
          const metres = (m: number) => knit({ craft, metresPer100g: m, fibre }).thicknessMm;
          const weight = (weightCategory: number) => knit({ craft, weightCategory }).thicknessMm;
          expect(wraps(n)).toBeGreaterThan(wraps(n + 1));
          expect(metres(10 * n)).toBeGreaterThan(metres(10 * n + 10));
          expect(weight((n % 7) + 1)).toBeGreaterThan(weight(n % 7));
          expect(crochet({ wrapsPerInch: n }).thicknessMm).toBeGreaterThan(knit({ wrapsPerInch: n }).thicknessMm);
        },
      ),
    );
  });

  it('asks whether four layers were taken for one, and uses what was measured', () => {
    const fabric = knit({ thicknessMm: 12, weightCategory: 4 });
    expect(fabric.thicknessMm).toBe(12);
    expect(fabric.notes[0]).toMatchObject({ code: 'thickness-doubtful', params: { times: 4 } });
    expect(codes(knit({ thicknessMm: 3, weightCategory: 4 }))).not.toContain('thickness-doubtful');
    expect(codes(knit({ thicknessMm: 1, weightCategory: 4 }))).toContain('thickness-doubtful');
  });

  it('asks beyond two and a half times either way, not at it', () => {
    const notes = (thicknessMm: number) =>
      codes(
        crochet({ thicknessMm, weightCategory: 6, ribStretch: 1, stretch: { across: 0.2, along: 0 }, growth: STILL }),
      );
    expect([notes(22.5), notes(3.6)]).toEqual([[], []]); // 9 mm is expected
    expect([notes(22.6), notes(3.5)]).toEqual([['thickness-doubtful'], ['thickness-doubtful']]);
  });

  it('says from what each number is', () => {
    expect(knit({ thicknessMm: 3 }).source).toEqual({ code: 'four-layers', params: {} });
    const [ofYarn] = knit({ wrapsPerInch: 10 }).notes;
    expect(ofYarn).toEqual({
      code: 'thickness-from-yarn',
      params: { yarn: { code: 'wraps', params: { wrapsPerInch: 10, stitch: 'stockinette' } } },
      source: { code: 'calibrated', params: {} },
    });
    const published = knit({ weightCategory: 4 });
    const source = { code: 'weight-category', params: { category: 4, name: 'medium', stitch: 'stockinette' } };
    expect(published.source).toEqual(source);
    expect(published.notes[0]).toEqual({
      code: 'thickness-from-category',
      params: { yarn: source, fromMm: 2.5, toMm: 3.5, assumed: false },
      source: { code: 'publication', params: { title: EXPECTED_THICKNESS_SOURCE } },
    });
    expect(knit({ thicknessMm: 3 }).notes.at(-1)).toEqual({
      code: 'rib-assumed',
      params: {},
      source: { code: 'assumed', params: {} },
    });
  });

  it('has the band of a category where its wraps are among several', () => {
    const bands = knit({ wrapsPerInch: 12, weightCategory: 4 }).notes.map(({ code }) => code);
    expect(bands).toContain('wraps-bands');
  });

  it('says that bands of wraps overlap, and when the category is none of them', () => {
    const note = (known: Partial<FabricInput>) => knit(known).notes.find(({ code }) => code.startsWith('wraps-'));
    expect(note({ wrapsPerInch: 12 })).toMatchObject({
      code: 'wraps-bands',
      params: { wrapsPerInch: 12, weights: [{ category: 2 }, { category: 3 }, { category: 4, name: 'medium' }] },
    });
    expect(note({ wrapsPerInch: 10, weightCategory: 4 })).toMatchObject({
      code: 'wraps-bands',
      params: { weights: [{ category: 4 }] },
    });
    expect(note({ wrapsPerInch: 4.5 })?.params).toMatchObject({ weights: [] });
    expect(note({ wrapsPerInch: 12, weightCategory: 6 })).toMatchObject({
      code: 'wraps-and-category-differ',
      params: { category: 6 },
    });
  });
});

describe('growth and stretch', () => {
  it('are kept as measured, and need no notes then', () => {
    const [growth, stretch] = [
      { across: 0, along: 0.02 },
      { across: 0.2, along: 0.1 },
    ];
    const fabric = knit({ thicknessMm: 3, growth, stretch, ribStretch: 0.8, massPerAreaGsm: 400 });
    expect(fabric).toMatchObject({
      growth,
      stretch,
      ribUsable: 0.4,
      ribMeasured: true,
      massPerAreaGsm: 400,
      notes: [],
    });
  });

  it('have a note where no swatch was measured, and the craft’s usual rib and main fabric', () => {
    expect(knit({ thicknessMm: 3 })).toMatchObject({ growth: null, stretch: null, ribUsable: 0.5, ribMeasured: false });
    expect([knit({ thicknessMm: 3 }).mainUsable, crochet({ thicknessMm: 3 }).mainUsable]).toEqual([0.1, 0.04]);
    expect(crochet({ thicknessMm: 3 }).ribUsable).toBe(0.2);
    expect(codes(crochet({ thicknessMm: 3 }))).toEqual(['growth-unknown', 'stretch-assumed', 'rib-assumed']);
  });
});

describe('refusals', () => {
  it.each([
    [{ thicknessMm: 0 }, '/thicknessMm'],
    [{ thicknessMm: -3 }, '/thicknessMm'],
    [{ thicknessMm: NaN }, '/thicknessMm'],
    [{ thicknessMm: 1e308 }, '/thicknessMm'],
    [{ thicknessMm: 3, thicknessU: -0.1 }, '/thicknessU'],
    [{ wrapsPerInch: Infinity }, '/wrapsPerInch'],
    [{ metresPer100g: 0, fibre: 'wool' }, '/metresPer100g'],
    [{ thicknessMm: 3, massPerAreaGsm: 0 }, '/massPerAreaGsm'],
    [{ thicknessMm: 3, ribStretch: -0.1 }, '/ribStretch'],
    [{ thicknessMm: 3, stretch: { across: 20, along: 0 } }, '/stretch/across'],
    [{ thicknessMm: 3, growth: { across: 0, along: -1 } }, '/growth/along'],
  ] as const)('%j points to %s', (known, pointer) => {
    expect(() => knit(known)).toThrow(expect.objectContaining({ code: 'fabric-out-of-range', pointer }));
  });

  it.each([-1, 8, 2.5, NaN])('weight category %d', (weightCategory) => {
    expect(() => knit({ weightCategory })).toThrow(expect.objectContaining({ code: 'weight-category-unknown' }));
  });

  it('a stitch of the other craft', () => {
    expect(() => knit({ weightCategory: 4, stitch: 'single-crochet' })).toThrow(
      expect.objectContaining({ code: 'stitch-of-other-craft', pointer: '/stitch' }),
    );
    expect(STITCHES.map((stitch, i) => knit({ weightCategory: 4, stitch, craft: CRAFTS[i]! }).from)).toEqual([
      'category',
      'category',
    ]);
  });
});

it('fabricProblems lists every wrong field at once', () => {
  const wrong: FabricInput = { ...NOTHING, thicknessMm: -1, weightCategory: 9, growth: { across: -1, along: 7 } };
  expect(fabricProblems(wrong).map(({ pointer }) => pointer)).toEqual([
    '/thicknessMm',
    '/growth/across',
    '/growth/along',
    '/weightCategory',
  ]);
  expect(fabricProblems({ ...NOTHING, thicknessMm: 3 })).toEqual([]);
});

it('changes nothing in its input', () => {
  const input = Object.freeze({ ...NOTHING, thicknessMm: 3, growth: Object.freeze({ across: 0, along: 0.02 }) });
  expect(() => resolveFabric(input)).not.toThrow();
});

describe('fabricProblems', () => {
  const problems = (known: Partial<FabricInput>) =>
    fabricProblems({ ...NOTHING, ...known }).map(({ code, params, pointer }) => ({ code, params, pointer }));

  it.each([
    ['thicknessMm', 0.2, 40, 'mm'],
    ['thicknessU', 0, 20, 'mm'],
    ['wrapsPerInch', 1, 100, null],
    ['metresPer100g', 2, 3000, 'm'],
    ['massPerAreaGsm', 10, 10_000, 'g/m²'],
    ['ribStretch', 0, 5, null],
  ] as const)(
    'takes %s from %d to %d, both ends included, and says so of what is beyond',
    (name, smallest, largest, unit) => {
      expect([problems({ [name]: smallest }), problems({ [name]: largest })]).toEqual([[], []]);
      for (const value of [smallest - 0.01, largest + 0.01])
        expect(problems({ [name]: value })).toEqual([
          { code: 'fabric-out-of-range', params: { value, smallest, largest, unit }, pointer: `/${name}` },
        ]);
    },
  );

  it.each([
    ['stretch', 0, 5],
    ['growth', -0.5, 1],
  ] as const)('takes %s from %d to %d either way', (name, smallest, largest) => {
    const both = { across: smallest, along: largest };
    expect(problems({ [name]: both })).toEqual([]);
    const params = { smallest, largest, unit: null };
    expect(problems({ [name]: { across: smallest - 1, along: largest + 1 } })).toEqual([
      { code: 'fabric-out-of-range', params: { value: smallest - 1, ...params }, pointer: `/${name}/across` },
      { code: 'fabric-out-of-range', params: { value: largest + 1, ...params }, pointer: `/${name}/along` },
    ]);
  });

  it('says which category or stitch there is none of', () => {
    expect(problems({ weightCategory: 8 })).toEqual([
      { code: 'weight-category-unknown', params: { category: 8 }, pointer: '/weightCategory' },
    ]);
    expect(problems({ stitch: 'single-crochet' })).toEqual([
      { code: 'stitch-of-other-craft', params: { stitch: 'single-crochet', craft: 'knit' }, pointer: '/stitch' },
    ]);
  });
});
