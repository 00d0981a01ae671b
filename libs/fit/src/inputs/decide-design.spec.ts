import { describe, expect, it } from 'vitest';
import { garmentOf, PLAIN } from '../../../../tests/support/fit-samples.ts';
import type { DesignWish } from '../design/design.ts';
import { decideDesign } from './decide-design.ts';

const NOTHING_SAID: DesignWish = { ...PLAIN, basis: null, length: null, ease: null };
const decided = (wish: Partial<DesignWish>, garment = garmentOf({ 'chest-width': 500, 'shoulder-to-hem': 600 })) =>
  decideDesign({ ...NOTHING_SAID, ...wish }, { garment, favourites: { count: 2, mean: 88, sd: 30 } });
const asGarment = { as: 'garment', changeMm: 0 };

describe('what was left out', () => {
  it('is the garment’s, where one fits that has a chest width', () => {
    expect(decided({})).toMatchObject({ basis: 'both', length: 'as-garment', ease: asGarment });
  });

  it('is a regular length, where the garment has none', () => {
    expect(decided({}, garmentOf({ 'chest-width': 500 }))).toMatchObject({ length: 'regular', ease: asGarment });
  });

  it('is the body’s, classic and regular, without a garment that has a chest width', () => {
    const plain = { basis: 'body', length: 'regular', ease: { category: 'classic', place: 0.5 } };
    expect(decided({}, garmentOf({ 'cuff-width': 100, 'shoulder-to-hem': 600 }))).toMatchObject(plain);
    expect(decideDesign(NOTHING_SAID, { garment: null, favourites: null })).toMatchObject(plain);
  });

  it('gives way to what was said', () => {
    const said = { basis: 'body', length: 'cropped', ease: { mm: 40 } } as const;
    expect(decided(said)).toMatchObject(said);
    expect(decided({ length: 'long' })).toMatchObject({ basis: 'both', length: 'long', ease: asGarment });
  });
});

describe('a wish for what garments have', () => {
  it('is their mean, for those that she likes', () => {
    expect(decided({ ease: { as: 'favourites' } }).ease).toEqual({ mm: 88 });
  });

  it('may be a garment’s ease and length on a body', () => {
    const wish = { basis: 'body', ease: { as: 'garment', changeMm: 20 }, length: 'as-garment' } as const;
    expect(decided(wish)).toMatchObject({ ease: wish.ease, length: 'as-garment' });
  });

  it.each([
    [{ basis: 'garment' }, 'garment-missing', '/basis'],
    [{ ease: { as: 'garment', changeMm: 0 } }, 'garment-missing', '/ease'],
    [{ ease: { as: 'favourites' } }, 'favourites-too-few', '/ease'],
    [{ length: 'as-garment' }, 'garment-length-missing', '/length'],
  ] as const)('%o without any is refused', (wish, code, pointer) => {
    const deciding = () => decideDesign({ ...NOTHING_SAID, ...wish }, { garment: null, favourites: null });
    expect(deciding).toThrow(expect.objectContaining({ code, pointer }));
  });
});
