/**
 * Seven garments worked by hand from the model's formulas (docs/model.md),
 * apart from the code; to 0.1 mm. Source: the project's own derivation.
 */
import { describe, expect, it } from 'vitest';
import { advise, type Advice, type Design, type FitRequest, type MadePiece, rulesWith } from '#fit';
import type { BodyProfile, ProfileValue } from '#body';
import { resolveBody } from '#body';
import { resolveFabric, type FabricInput } from '#fabric';

const measured = (value: number, u = 1): ProfileValue => ({
  value,
  u,
  how: 'home',
  from: { code: 'measured', params: { how: 'home' } },
});

const WOMAN: BodyProfile = {
  figure: 'woman',
  ageYears: null,
  values: {
    'chest-girth': measured(940, 15),
    'hip-girth': measured(990),
    'back-waist-length': measured(437),
    'across-back': measured(404),
    'nape-to-cuff': measured(743),
    'upper-arm-girth': measured(280),
    'wrist-girth': measured(160),
    'scye-depth': measured(184),
    'neck-base-girth': measured(371),
    'head-girth': measured(561),
  },
  covariance: null,
  missing: {},
  notes: [],
};

const fabric = (thicknessMm: number): FabricInput => ({
  craft: 'knit',
  stitch: null,
  thicknessMm,
  thicknessU: 0.3,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
});

const PLAIN: Design = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  neckline: 'crew',
  length: 'regular',
  customLengthMm: null,
  basis: 'body',
  hem: 'straight',
  ease: { category: 'classic', place: 0.5 },
  easeChangeMm: 0,
  layer: null,
  bandMm: 25,
  frontBandMm: null,
  overlapMm: null,
  ribMm: null,
  neckWidthMm: null,
  frontNeckDepthMm: null,
  backNeckDepthMm: null,
  seamAllowanceMm: 0,
};

function adviceFor(
  design: Partial<Design>,
  made: readonly MadePiece[] = [],
  request: Partial<FitRequest> = {},
): Advice {
  return advise({
    body: WOMAN,
    garment: null,
    fabric: resolveFabric(fabric(6)),
    design: { ...PLAIN, ...design },
    made,
    rules: rulesWith({}),
    ...request,
  });
}

/** A dimension by `assembled/name` or `piece/name`, in mm. */
function mm(advice: Advice, path: string): number {
  const [where, name] = path.split('/');
  const among =
    where === 'assembled' ? advice.assembled : advice.pieces.find(({ piece }) => piece === where)!.dimensions;
  const dimension = among.find((each) => each.name === name);
  if (!dimension) throw new Error(`no ${path}`);
  return dimension.value ?? NaN;
}

function expectAll(advice: Advice, expected: Record<string, number>): void {
  const got = Object.fromEntries(Object.keys(expected).map((path) => [path, Number(mm(advice, path).toFixed(1))]));
  for (const [path, value] of Object.entries(expected)) {
    expect(Math.abs(mm(advice, path) - value), `${path}: ${got[path]} for ${value}`).toBeLessThanOrEqual(0.1);
  }
}

const check = (advice: Advice, name: string) => advice.checks.find((each) => each.check === name)!;

describe('the worked examples', () => {
  it('common numbers and 1: drop shoulder and squared drop', () => {
    const drop = adviceFor({});
    expectAll(drop, {
      'assembled/chest-width': 513.5,
      'back/width': 510.9,
      'sleeve/cuff-width': 188.1,
      'assembled/centre-back-length': 587.0,
      'assembled/shoulder-to-hem': 607.6,
      'assembled/neck-width': 143.1,
      'assembled/front-neck-depth': 74.2,
      'assembled/back-neck-depth': 20.6,
      'back/neck-width': 193.1,
      'front/front-neck-depth': 99.2,
      'back/back-neck-depth': 45.6,
      'assembled/neck-opening': 385.0,
      'assembled/armhole-depth': 247.2,
      'sleeve/sleeve-top-width': 494.4,
      'sleeve/sleeve-length': 487.5,
      'assembled/body-to-underarm': 360.4,
    });
    expect(drop.design.ease.room).toBeCloseTo(63, 6);
    expect(check(drop, 'head-through-neck')).toMatchObject({ need: 561 });
    expect(check(drop, 'head-through-neck').have).toBeCloseTo(577.5, 1);
    const squared = adviceFor({ construction: 'squared-drop' });
    expectAll(squared, {
      'back/armhole-inset': 26.7,
      'assembled/cross-back-width': 457.5,
      'assembled/armhole-depth': 234.2,
      'sleeve/sleeve-length': 514.3,
      'sleeve/underarm-seam': 487.5,
    });
  });

  it('2: set-in, and a vest', () => {
    expectAll(adviceFor({ construction: 'set-in' }), {
      'assembled/armhole-depth': 209.2,
      'back/armhole-inset': 49.0,
      'back/shoulder-fall': 22.0,
      'back/underarm-bind-off': 24.5,
      'sleeve/sleeve-top-width': 313.1,
      'sleeve/cap-top-width': 2 * 34.4,
      'sleeve/cap-height': 149.4,
      'sleeve/underarm-seam': 387.1,
      'assembled/body-to-underarm': 376.4,
    });
    expectAll(adviceFor({ construction: 'set-in', silhouette: 'vest' }), {
      'back/armhole-depth': 234.2,
      'assembled/cross-back-width': 413.0,
      'back/cross-back-width': 363.0,
    });
  });

  it('3: raglan', () => {
    const raglan = adviceFor({ construction: 'raglan' });
    expectAll(raglan, {
      'assembled/raglan-depth': 239.2,
      'back/raglan-depth': 214.2,
      'back/neck-width': 173.8,
      'back/raglan-bind-off': 25.5,
      'sleeve/cap-top-width': 2 * 32.2,
      'sleeve/sleeve-raglan-depth': 237.9,
      'sleeve/underarm-seam': 408.6,
      'assembled/body-to-underarm': 347.8,
    });
    const edge = (piece: string, name: string) =>
      raglan.pieces.find((each) => each.piece === piece)!.joins.find((join) => join.edge === name)!.length - 25.5;
    expect(edge('back', 'left armhole')).toBeCloseTo(257.6, 0);
    expect(edge('sleeve', 'back armhole edge')).toBeCloseTo(edge('back', 'left armhole'), 9);
  });

  it('4: a V with its band, and a cardigan', () => {
    expectAll(adviceFor({ neckline: 'v' }), { 'assembled/front-neck-depth': 177.3, 'front/front-neck-depth': 245.6 });
    expectAll(adviceFor({ silhouette: 'cardigan' }), { 'left-front/width': 240.5, 'right-front/width': 240.5 });
  });

  it('5: a child of six', () => {
    const body = resolveBody(
      { figure: 'child', ageYears: 6, measures: [{ name: 'chest-girth', value: 635, how: 'table' }] },
      { estimate: true },
    );
    const request = { body, fabric: resolveFabric(fabric(4)) };
    const drop = adviceFor({ bandMm: null }, [], request);
    expect(drop.design.ease.chosen).toBeCloseTo(63.4, 1);
    expectAll(drop, {
      'assembled/chest-width': 702.4 / 2,
      'back/width': 349.5,
      'assembled/neck-width': 128.2,
      'assembled/front-neck-depth': 67.9,
      'assembled/neck-opening': 347.5,
      'assembled/armhole-depth': 170.1,
      'sleeve/sleeve-length': 346.0,
    });
    expect(check(drop, 'head-through-neck').have).toBeCloseTo(521.2, 1);
    expectAll(adviceFor({ bandMm: null, construction: 'raglan' }, [], request), {
      'back/raglan-depth': 143.5,
      'sleeve/sleeve-raglan-depth': 150.2,
      'sleeve/underarm-seam': 285.3,
    });
  });

  it('6: with a back already made', () => {
    const back: MadePiece = { piece: 'back', name: 'width', value: 530.9 };
    const drop = adviceFor({}, [back]);
    expectAll(drop, { 'assembled/chest-width': 1067.0 / 2, 'sleeve/sleeve-length': 477.5 });
    expect(drop.design.ease.tableTerms).toBeCloseTo(115.0, 0);
    expect(drop.design.ease.lies).toEqual({ code: 'within', params: { category: 'loose' } });
    expectAll(adviceFor({ construction: 'set-in' }, [back]), {
      'sleeve/cap-height': 154.4,
      'sleeve/underarm-seam': 382.1,
    });
    const planned = adviceFor({ construction: 'set-in' });
    const sleeves: MadePiece[] = [
      { piece: 'sleeve', name: 'sleeve-top-width', value: mm(planned, 'sleeve/sleeve-top-width') },
      { piece: 'sleeve', name: 'cap-height', value: mm(planned, 'sleeve/cap-height') },
    ];
    expectAll(adviceFor({ construction: 'set-in' }, [back, ...sleeves]), { 'assembled/armhole-depth': 204.9 });
    expectAll(adviceFor({ construction: 'raglan' }, [back]), {
      'sleeve/sleeve-raglan-depth': 243.8,
      'sleeve/underarm-seam': 402.7,
    });
  });

  it('7: uncertainty, the chance of the band, and how far the chest width may be rounded', () => {
    const drop = adviceFor({});
    const width = drop.assembled.find(({ name }) => name === 'chest-width')!;
    expect(width.u).toBeCloseTo(7.52, 2);
    expect(drop.pieces[0]!.dimensions[0]!.u).toBeCloseTo(7.51, 2);
    expect(drop.design.ease.chanceOfBand).toBeCloseTo(0.83, 2);
    expect(width.low).toBeCloseTo(507.0, 1);
    expect(width.high).toBeCloseTo(526.0, 1);
    expect(width.follows).toMatchObject({ 'sleeve-length': -0.5 });
  });

  it('why thick yarn disappoints', () => {
    const room = (t: number) => 2 * 432 - 4 * t - 838;
    expect([room(3), room(7)]).toEqual([14, -2]);
    const thin = { ...WOMAN, values: { ...WOMAN.values, 'chest-girth': measured(838) } };
    const garment = (t: number) =>
      adviceFor({ length: 'cropped', ease: { mm: 26 - 4 * (t - 3) } }, [], {
        body: thin,
        fabric: resolveFabric(fabric(t)),
      });
    for (const t of [3, 7]) {
      expect(mm(garment(t), 'assembled/chest-width')).toBeCloseTo(432, 9);
      expect(garment(t).design.ease.room).toBeCloseTo(room(t), 9);
    }
  });
});
