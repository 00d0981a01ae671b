import { describe, expect, it } from 'vitest';
import { flatFromMid } from '#fabric';
import type { Garment, GarmentMeasure } from '#garment';
import { exampleInput, knit, meta } from '../../../tests/target-sheet/inputs.ts';
import { composeSheet } from './compose-sheet.ts';
import { growthLearned } from './growth-learned.ts';
import { inUnit } from './in-unit.ts';
import type { SheetInput } from './sheet-input.ts';
import type { TargetSheet } from './target-sheet.ts';

const T = 5;
const sheetOf = (change: Partial<SheetInput> = {}): TargetSheet => composeSheet({ ...exampleInput, ...change }, meta);
const garmentOf = (measures: readonly GarmentMeasure[]): Garment => ({
  title: '',
  construction: 'drop-shoulder',
  measures,
  thicknessMm: T,
  thicknessU: 0.3,
  layer: null,
  wornStretched: false,
  fits: null,
  neckline: null,
  sleeve: 'long',
  wears: {},
});

/** What was made, less its allowance: the value that was planned, off the needles. */
function made(sheet: TargetSheet, piece: string, name: string): number {
  const found = sheet.pieces.find((each) => each.piece === piece)?.dimensions.find((each) => each.name === name);
  const growth = sheet.fabric.growth?.[found!.axis] ?? 0;
  return found!.value! / (1 + growth);
}

/** The flat measures of a garment that was made by a sheet, some longer and some narrower than made. */
function washed(sheet: TargetSheet, across: number, along: number): Garment {
  const flat = (mid: number) => flatFromMid(mid, T) / 2;
  const measure = (name: GarmentMeasure['name'], value: number): GarmentMeasure => ({ name, value, how: 'trained' });
  return garmentOf([
    // A panel is half of the girth between the faces; a sleeve is all of its girth.
    measure('chest-width', flat(2 * made(sheet, 'back', 'width') * (1 + across))),
    measure('sleeve-top-width', flat(made(sheet, 'sleeve', 'sleeve-top-width') * (1 + across))),
    measure('shoulder-to-hem', made(sheet, 'back', 'shoulder-to-hem') * (1 + along)),
    measure('armhole-depth', made(sheet, 'back', 'armhole-depth') * (1 + along)),
    measure('sleeve-length', made(sheet, 'sleeve', 'sleeve-length') * (1 + along)),
  ]);
}

describe('what a garment tells of the growth of its yarn', () => {
  it('is what it is longer and narrower than it was made', () => {
    const sheet = sheetOf();
    const { across, along } = growthLearned(sheet, washed(sheet, -0.01, 0.02));
    expect(across!.growth).toBeCloseTo(-0.01, 9);
    expect(along!.growth).toBeCloseTo(0.02, 9);
    expect(across!.from.map(({ name }) => name)).toEqual(['chest-width', 'sleeve-top-width']);
    expect(along!.from.map(({ name }) => name)).toEqual(['shoulder-to-hem', 'armhole-depth', 'sleeve-length']);
  });

  it('is all of the growth, where some was planned, and leaves the seams out', () => {
    const growth = { across: 0.03, along: 0.05 };
    const design = { ...exampleInput.design, seamAllowanceMm: 10 };
    const sheet = sheetOf({ fabric: { ...knit, growth }, design });
    const { across, along } = growthLearned(sheet, washed(sheet, 0.03, 0.07));
    expect(across!.growth).toBeCloseTo(0.03, 9);
    expect(along!.growth).toBeCloseTo(0.07, 9);
  });

  it('is the same by a sheet in inches', () => {
    const sheet = sheetOf();
    const garment = washed(sheet, -0.01, 0.02);
    expect(growthLearned(inUnit(sheet, 'in'), garment).along!.growth).toBeCloseTo(0.02, 9);
  });

  it('is as sure as making and reading let it be, and surer with more', () => {
    const sheet = sheetOf();
    const length = made(sheet, 'back', 'shoulder-to-hem');
    const one = growthLearned(sheet, garmentOf([{ name: 'shoulder-to-hem', value: length, how: 'home', u: 6 }])).along!;
    // 1.5 % of making, 6 mm of reading.
    expect(one.u).toBeCloseTo(Math.hypot(0.015, 6 / length), 12);
    expect(growthLearned(sheet, washed(sheet, 0, 0)).along!.u).toBeLessThan(one.u);
  });

  it('weighs the surer measure more', () => {
    const sheet = sheetOf();
    const length = made(sheet, 'back', 'shoulder-to-hem');
    const sleeve = made(sheet, 'sleeve', 'sleeve-length');
    const { along } = growthLearned(
      sheet,
      garmentOf([
        { name: 'shoulder-to-hem', value: length * 1.01, how: 'home', u: 1 },
        { name: 'sleeve-length', value: sleeve * 1.05, how: 'home', u: 30 },
      ]),
    );
    expect(along!.growth).toBeGreaterThan(0.01);
    expect(along!.growth).toBeLessThan(0.02);
  });

  it('is not read from edges in rib, nor from a sleeve measured from the centre back', () => {
    const garment = garmentOf([
      { name: 'hem-width', value: 480, how: 'home' },
      { name: 'cuff-width', value: 100, how: 'home' },
      { name: 'sleeve-length', value: 700, how: 'home', from: 'centre-back' },
    ]);
    expect(growthLearned(sheetOf(), garment)).toEqual({ across: null, along: null });
    const bare = sheetOf({ design: { ...exampleInput.design, ribMm: 0 } });
    expect(growthLearned(bare, garment).across!.from.map(({ name }) => name)).toEqual(['hem-width', 'cuff-width']);
  });

  it('says nothing of a sleeve where the sheet has none', () => {
    const vest = sheetOf({ design: { ...exampleInput.design, silhouette: 'vest' } });
    const garment = garmentOf([{ name: 'sleeve-length', value: 480, how: 'home' }]);
    expect(growthLearned(vest, garment)).toEqual({ across: null, along: null });
  });
});
