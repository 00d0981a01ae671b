import { DomainError } from '#measure';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardiganSheet, pulloverSheet, sampleSheets } from '../../../tests/target-sheet/samples/index.ts';
import { inUnit } from './in-unit.ts';
import { readSheet } from './read-sheet.ts';
import { SHEET_UNITS } from './target-sheet.ts';

const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
function refusal(json: unknown): DomainError {
  try {
    readSheet(json);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error('The sheet was read.');
}

describe('reading a sheet back', () => {
  it('loses nothing, whatever the unit', () => {
    for (const sheet of sampleSheets)
      for (const unit of SHEET_UNITS) {
        const kept = asJson(inUnit(sheet, unit));
        expect(readSheet(kept)).toEqual(kept);
      }
  });

  it('takes a newer minor version with its new fields', () => {
    const newer = {
      ...pulloverSheet,
      version: '1.12',
      washing: 'cold',
      fabric: { ...pulloverSheet.fabric, yarn: 'x' },
    };
    expect(readSheet(asJson(newer))).toEqual(newer);
  });

  it('refuses a newer major version in a clear line, whatever else it holds', () => {
    const error = refusal({ format: 'easewright/target-sheet', version: '2.0' });
    expect(error.code).toBe('sheet-version-too-new');
    expect(error.pointer).toBe('/version');
    expect(error.params).toEqual({ version: '2.0', major: 1 });
  });

  it('refuses what is no sheet', () => {
    for (const json of [null, 7, 'sheet', [], {}, { format: 'other/thing', version: '1.0' }])
      expect(refusal(json).code).toBe('sheet-format-unknown');
  });

  it('names the first flaw, and how many more there are', () => {
    const error = refusal(asJson({ ...pulloverSheet, unit: 'ell', title: 7, id: '', pieces: null, notes: {} }));
    expect(error).toMatchObject({ code: 'sheet-invalid', pointer: '/id', params: { more: 2 } });
    expect(error.params['flaws']).toContainEqual({
      pointer: '/unit',
      code: 'not-among',
      params: { known: ['mm', 'cm', 'in'] },
    });
  });

  it('refuses a value without limits, and no value without a reason', () => {
    const [first, ...rest] = cardiganSheet.assembled;
    const noLow = asJson({ ...cardiganSheet, assembled: [{ ...first, low: undefined }, ...rest] });
    expect(refusal(noLow)).toMatchObject({ code: 'sheet-invalid', pointer: '/assembled/0' });
    const noReason = asJson({ ...cardiganSheet, assembled: [{ ...first, value: null }, ...rest] });
    expect(refusal(noReason).params['flaws']).toContainEqual({
      pointer: '/assembled/0',
      code: 'field-missing',
      params: { name: 'noAdvice' },
    });
  });

  it('answers every JSON value with a sheet or a refusal', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        expect(refusal(json).code).toBe('sheet-format-unknown');
      }),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), fc.string(), (fields, version) => {
        const json = { ...fields, format: 'easewright/target-sheet', version };
        expect(['sheet-invalid', 'sheet-version-too-new']).toContain(refusal(json).code);
      }),
    );
  });
});
