import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pulloverSheet, sampleSheets } from '../../../tests/target-sheet/samples/index.ts';
import { inUnit } from './in-unit.ts';
import { SHEET_UNITS, type TargetSheet } from './target-sheet.ts';

/** Every number in a document with its place, for comparing two of them. */
function numbersIn(value: unknown, pointer = ''): [string, number][] {
  if (typeof value === 'number') return [[pointer, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => numbersIn(inside, `${pointer}/${key}`));
}

/** Places whose numbers are no lengths: counts, fractions, chances, mm a mm, ratios. */
const noLength =
  /\/(make|mirrored|place|chanceOfBand|chanceOfFailing|stretch\/\w+|growth\/\w+|follows\/\d+\/slope|edges\/\d+\/(from|to)|equals\/\d+\/times|change\/\w+)$/;
const ratioCheck = (sheet: TargetSheet) => sheet.checks.findIndex(({ check }) => check === 'sleeve-taper');

describe('a sheet in another unit', () => {
  it('has every length divided by the millimetres of the unit, and every other number as it was', () => {
    const ratio = `/checks/${ratioCheck(pulloverSheet)}/`;
    const inches = new Map(numbersIn(inUnit(pulloverSheet, 'in')));
    let lengths = 0;
    for (const [place, mm] of numbersIn(pulloverSheet)) {
      const kept = noLength.test(place) || place.startsWith(ratio);
      expect([place, inches.get(place)]).toEqual([place, kept ? mm : mm / 25.4]);
      lengths += kept ? 0 : 1;
    }
    expect(lengths).toBeGreaterThan(200);
  });

  it('says its unit and keeps what has no advice', () => {
    for (const sheet of sampleSheets) {
      const cm = inUnit(sheet, 'cm');
      expect(cm.unit).toBe('cm');
      expect(cm.assembled.map(({ value }) => value === null)).toEqual(
        sheet.assembled.map(({ value }) => value === null),
      );
      expect(cm.pieces.map((piece) => 'outline' in piece)).toEqual(sheet.pieces.map((piece) => 'outline' in piece));
    }
  });

  it('comes back to what it was, and leaves the sheet it was given alone', () => {
    const before = structuredClone(sampleSheets);
    fc.assert(
      fc.property(
        fc.constantFrom(...sampleSheets),
        fc.constantFrom(...SHEET_UNITS),
        fc.constantFrom(...SHEET_UNITS),
        (sheet, one, two) => {
          const back = numbersIn(inUnit(inUnit(inUnit(sheet, one), two), 'mm'));
          numbersIn(sheet).forEach(([place, mm], index) => {
            expect(back[index]?.[0]).toBe(place);
            expect(back[index]?.[1]).toBeCloseTo(mm, 9);
          });
        },
      ),
      { numRuns: 30 },
    );
    expect(sampleSheets).toEqual(before);
  });
});
