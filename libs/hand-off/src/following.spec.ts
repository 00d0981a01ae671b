import { describe, expect, it } from 'vitest';
import { exampleSheet } from './example-sheet.ts';
import { ratesOf } from './following.ts';
import { placedDimensions, type SheetDimension } from './sheet-dimension.ts';

const dimensions = placedDimensions(exampleSheet);
const one = (place: string, name: string): SheetDimension => {
  const found = dimensions.find((each) => each.place === place && each.dimension.name === name);
  if (!found) throw new Error(name);
  return found.dimension;
};
const rate = ratesOf(exampleSheet);

describe('how dimensions move each other', () => {
  it('is what the sheet says', () => {
    expect(rate(one('back', 'width'), one('sleeve', 'sleeve-length'))).toBe(-0.5);
    expect(rate(one('sleeve', 'sleeve-length'), one('back', 'width'))).toBe(0);
  });

  it('is by as much for namesakes as long', () => {
    expect(rate(one('back', 'width'), one('front', 'width'))).toBe(1);
  });

  it('is by piece and name: a namesake that the sheet does not list stays', () => {
    expect(rate(one('back', 'hem-width'), one('front', 'hem-width'))).toBe(0);
  });
});
