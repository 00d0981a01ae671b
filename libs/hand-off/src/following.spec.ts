import { describe, expect, it } from 'vitest';
import { exampleSheet } from './example-sheet.ts';
import { ratesOf } from './following.ts';
import { placedDimensions, type SheetDimension } from './sheet-dimension.ts';

/** The example sheet with namesakes that differ: a sleeve's top (twice the armhole) and the bands of neck and front. */
const sheet = structuredClone(exampleSheet) as unknown as { pieces: { piece: string; dimensions: object[] }[] };
const add = (piece: string, name: string, value: number, follows?: object): void =>
  void sheet.pieces.push({ piece, dimensions: [{ name, value, because: [], ...(follows && { follows }) }] });
add('back', 'armhole-depth', 240, { 'body-to-underarm': -1, 'sleeve-top-width': 1 });
add('front', 'sleeve-top-width', 240, { 'body-to-underarm': -1, 'armhole-depth': 1 });
add('sleeve', 'sleeve-top-width', 480, { 'body-to-underarm': -0.5, 'armhole-depth': 0.5 });
add('neck-band', 'band-depth', 25, { 'neck-edge': 6 });
add('front-band', 'band-depth', 30);

const dimensions = placedDimensions(sheet as never);
const one = (place: string, name: string): SheetDimension => {
  const found = dimensions.find((each) => each.place === place && each.dimension.name === name);
  if (!found) throw new Error(name);
  return found.dimension;
};
const rate = ratesOf(sheet as never);

describe('how dimensions move each other', () => {
  it('is what the sheet says', () => {
    expect(rate(one('back', 'width'), one('sleeve', 'sleeve-length'))).toBe(-0.5);
    expect(rate(one('sleeve', 'sleeve-length'), one('back', 'width'))).toBe(0);
  });

  it('is by as much for namesakes as long', () => {
    expect(rate(one('back', 'width'), one('front', 'width'))).toBe(1);
  });

  it('is in proportion for namesakes that move the same others', () => {
    expect(rate(one('back', 'armhole-depth'), one('front', 'sleeve-top-width'))).toBe(1);
    expect(rate(one('back', 'armhole-depth'), one('sleeve', 'sleeve-top-width'))).toBe(2);
    expect(rate(one('sleeve', 'sleeve-top-width'), one('back', 'armhole-depth'))).toBe(0.5);
  });

  it('is nothing for namesakes that have nothing to do with each other', () => {
    expect(rate(one('neck-band', 'band-depth'), one('front-band', 'band-depth'))).toBe(0);
  });
});
