import { afterEach, expect, it, vi } from 'vitest';
import { QUANTITIES } from '#measure';
import { InputPipe } from '../http/input.pipe.ts';
import { sheetInput } from './sheet-input.ts';
import { ComputeSheetDto } from './sheet-request.dto.ts';
import { sheetRequest, storedSheetRequest } from './sheet-request.ts';

const REQUEST = {
  body: {
    figure: 'woman',
    measures: [
      { name: 'chest-girth', text: '37 1/2 in', u: 0.2 },
      { name: 'weight', text: '62 kg' },
      { name: 'stature', value: 168, unit: 'cm' },
    ],
  },
  garment: {
    construction: 'raglan',
    measures: [{ name: 'chest-width', text: '52 cm' }],
    thickness: { text: '6 mm' },
    layer: { thickness: { text: '2 mm' }, sleeves: 'long' },
  },
  fabric: { craft: 'knit', thickness: { value: 3, unit: 'mm' } },
  design: {
    silhouette: 'pullover',
    construction: 'raglan',
    length: 'regular',
    neckline: 'crew',
    ease: { text: '3 in' },
    rib: { text: '6 cm' },
  },
  made: [{ piece: 'back', name: 'width', text: '51 cm' }],
};

afterEach(() => vi.restoreAllMocks());

it('parses each size of a request once, from its validation to the sheet and the snapshot beside it', () => {
  const parses = Object.values(QUANTITIES).map((quantity) => vi.spyOn(quantity, 'parse'));
  const conversions = Object.values(QUANTITIES).map((quantity) => vi.spyOn(quantity, 'from'));
  const dto = new InputPipe().transform(REQUEST, { metatype: ComputeSheetDto, type: 'body' }) as ComputeSheetDto;
  const request = sheetRequest(dto);
  expect(sheetInput(request)).toMatchObject({ garments: [{ thicknessMm: 6, basis: true }], design: { ribMm: 60 } });
  storedSheetRequest(request);

  const texts = parses.flatMap(({ mock }) => mock.calls.map(([text]) => text));
  expect(texts.toSorted()).toEqual(['37 1/2 in', '62 kg', '52 cm', '6 mm', '2 mm', '3 in', '6 cm', '51 cm'].toSorted());
  const numbers = conversions.flatMap(({ mock }) => mock.calls.map(([value]) => value));
  expect(numbers.toSorted()).toEqual([0.2, 168, 3].toSorted());
});
