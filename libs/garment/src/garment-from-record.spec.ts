import { describe, expect, it } from 'vitest';
import { garmentFromRecord, layerFromRecord } from './garment-from-record.ts';
import type { GarmentRecord } from './garment-record.ts';

const THIN = { value: 2.5, unit: 'mm' } as const;

describe('garmentFromRecord', () => {
  it('has every size in mm, and fills in what was left out', () => {
    const record: GarmentRecord = {
      construction: 'raglan',
      thickness: THIN,
      measures: [
        { name: 'chest-width', text: '17 1/2 in' },
        { name: 'sleeve-length', value: 47, unit: 'cm', u: 0.5, how: 'trained', from: 'centre-back' },
        { name: 'cuff-width', value: 95, unit: 'mm', how: null, from: null, u: null },
      ],
    };
    expect(garmentFromRecord(record)).toEqual({
      title: '',
      construction: 'raglan',
      measures: [
        { name: 'chest-width', value: 444.5, how: 'home' },
        { name: 'sleeve-length', value: 470, how: 'trained', u: 5, from: 'centre-back' },
        { name: 'cuff-width', value: 95, how: 'home' },
      ],
      thicknessMm: 2.5,
      thicknessU: 0.3,
      layer: null,
      wornStretched: false,
      fits: null,
      neckline: null,
      sleeve: 'long',
      wears: {},
    });
  });

  it('keeps what was said of it', () => {
    const record: GarmentRecord = {
      construction: 'set-in',
      measures: [],
      thickness: { ...THIN, u: 0.1 },
      layer: { thickness: { value: 1, unit: 'mm', u: 0.2 }, sleeves: 'long' },
      wornStretched: true,
      wears: { chest: 'close', hip: null, sleeve: 'roomy' },
    };
    expect(garmentFromRecord(record)).toMatchObject({
      thicknessU: 0.1,
      layer: { thicknessMm: 1, u: 0.2, sleeves: 'long' },
      wornStretched: true,
    });
    expect(garmentFromRecord(record).wears).toEqual({ chest: 'close', sleeve: 'roomy' });
    expect(garmentFromRecord({ ...record, wears: null }).wears).toEqual({});
  });
});

it('a layer without its uncertainty has the usual one; none is none', () => {
  expect(layerFromRecord({ thickness: THIN, sleeves: 'short' })).toEqual({
    thicknessMm: 2.5,
    u: 0.3,
    sleeves: 'short',
  });
  expect([layerFromRecord(null), layerFromRecord(undefined)]).toEqual([null, null]);
});
