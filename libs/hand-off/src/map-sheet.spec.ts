import { inUnit } from '#target-sheet';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleSheet } from './example-sheet.ts';
import { mapSheet, payloadText, type MappedSheet } from './map-sheet.ts';
import type { PlannerTakes } from './planner-takes.ts';

const takes = (more: Partial<PlannerTakes> = {}): PlannerTakes => ({
  unit: 'mm',
  roundingStep: null,
  format: 'flat',
  names: {},
  required: [],
  ...more,
});

function mapped(more: Partial<PlannerTakes>): Extract<MappedSheet, { ok: true }> {
  const result = mapSheet(exampleSheet, takes(more));
  if (!result.ok) throw new Error(JSON.stringify(result.missing));
  return result;
}

describe('mapSheet', () => {
  it('writes a planner’s own document in inches, rounded to quarters', () => {
    const names = {
      'sheet/title': '/name',
      'sheet/unit': '/units',
      'back/width': '/panels/0/w',
      'front/width': '/panels/1/w',
      'sleeve/sleeve-length': '/sleeve/len',
      'sleeve/sleeve-length/as-made': '/sleeve/raw',
    };
    const { payload, contentType, warnings } = mapped({ unit: 'in', roundingStep: 0.25, names });
    // In quarters: width 510.9/25.4 = 20.114 → 20 (−0.114, over its low of 19.858); sleeve 487.5/25.4 = 19.193,
    // + 0.057 for half the width's → 19.25; as made 490/25.4 = 19.291, + 0.057/1.02 = 19.347 → 19.25.
    expect(payload).toEqual({
      name: 'Harbour, "long"',
      units: 'in',
      panels: [{ w: 20 }, { w: 20 }],
      sleeve: { len: 19.25, raw: 19.25 },
    });
    expect(contentType).toBe('application/json');
    expect(warnings).toEqual([]);
  });

  it('sends everything under our own names where it has none, and says what it leaves out', () => {
    const { payload, warnings } = mapped({});
    expect(payload).toEqual({
      'sheet/id': exampleSheet.id,
      'sheet/title': exampleSheet.title,
      'sheet/created-at': exampleSheet.createdAt,
      'sheet/unit': 'mm',
      'assembled/chest-width': 513.5,
      'assembled/sleeve-length': 487.5,
      'back/width': 510.9,
      'back/hem-width': 510.9,
      'front/width': 510.9,
      'front/hem-width': 510.9,
      'sleeve/sleeve-length': 487.5,
      'sleeve/cuff-width': 188.1,
    });
    const reason = { code: 'no-advice', params: { reason: 'No neck was measured.' } };
    expect(warnings).toEqual([{ name: 'assembled/neck-width', code: 'left-out', params: { reason } }]);
  });

  it('refuses before anything is written when something required is missing, with the measure to take', () => {
    const required = ['assembled/neck-width', 'back/width', 'sleeve/cap-height'];
    expect(mapSheet(exampleSheet, takes({ required }))).toEqual({
      ok: false,
      missing: [
        {
          name: 'assembled/neck-width',
          reason: { code: 'no-advice', params: { reason: 'No neck was measured.' } },
          needs: ['neck-base-girth'],
        },
        {
          name: 'sleeve/cap-height',
          reason: {
            code: 'not-in-sheet',
            params: { name: 'sleeve/cap-height', silhouette: 'pullover', construction: 'drop-shoulder' },
          },
          needs: [],
        },
      ],
    });
  });

  it('says what cannot be rounded within how far it may be', () => {
    const { warnings } = mapped({ roundingStep: 5, names: { 'sleeve/cuff-width': '/cuff' } });
    expect(warnings).toEqual([
      { name: 'sleeve/cuff-width', code: 'rounded-outside-limits', params: { step: 5, unit: 'mm' } },
    ]);
  });

  it('writes one CSV record under the planner’s columns', () => {
    const names = { 'sheet/title': 'Name, of it', 'assembled/neck-width': 'neck', 'back/width': 'w "flat"' };
    const { payload, contentType } = mapped({ format: 'csv', unit: 'cm', names });
    expect(parse(payload as string)).toEqual([
      ['Name, of it', 'neck', 'w "flat"'],
      ['Harbour, "long"', '', '51.09'],
    ]);
    expect(contentType).toBe('text/csv; charset=utf-8');
  });

  it('writes the sheet’s own CSV, rounded, where the planner has no columns', () => {
    const { payload } = mapped({ format: 'csv', roundingStep: 10 });
    expect(parse(payload as string)).toContainEqual(expect.arrayContaining(['back', 'width', '510']));
  });

  it('sends a sheet as it is, in the planner’s unit', () => {
    const { payload } = mapped({ format: 'sheet', unit: 'in' });
    expect(payload).toEqual(inUnit(exampleSheet, 'in'));
    expect(JSON.parse(payloadText(payload))).toEqual(payload);
  });

  it('refuses what no planner can take', () => {
    expect(() => mapSheet(exampleSheet, takes({ names: { 'back/width': 'w' } }))).toThrow(
      expect.objectContaining({ code: 'their-name', pointer: '/names/back~1width' }),
    );
  });

  it('gives the same in whatever unit the sheet is kept, and leaves the sheet alone', () => {
    const unit = fc.constantFrom('mm' as const, 'cm' as const, 'in' as const);
    const step = fc.constantFrom(null, 0.125, 0.5, 1);
    const before = JSON.stringify(exampleSheet);
    fc.assert(
      fc.property(
        unit,
        unit,
        step,
        fc.constantFrom('flat' as const, 'csv' as const),
        (kept, theirs, roundingStep, format) => {
          const how = takes({
            unit: theirs,
            roundingStep,
            format,
            names: format === 'csv' ? { 'back/width': 'w' } : {},
          });
          expect(mapSheet(inUnit(exampleSheet, kept), how)).toEqual(mapSheet(exampleSheet, how));
        },
      ),
    );
    expect(JSON.stringify(exampleSheet)).toBe(before);
  });
});
