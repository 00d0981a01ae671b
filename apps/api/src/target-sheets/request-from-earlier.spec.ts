import { expect, it } from 'vitest';
import { requestFromEarlier } from './request-from-earlier.ts';

const green = { title: 'Green', measures: [{ name: 'chest-width' }] };
const change = { value: 2, unit: 'cm', text: null };

it('makes a list of the one garment, which was the basis', () => {
  expect(requestFromEarlier({ garment: green })).toEqual({ garments: [{ ...green, basis: true }] });
  expect(requestFromEarlier({ garment: null })).toEqual({ garments: [] });
});

it('takes the ease of a garment that was the basis, with its change', () => {
  const design = { basis: 'both', ease: { category: 'loose', place: 0.5 }, easeChange: change };
  expect(requestFromEarlier({ garment: green, design })).toMatchObject({
    design: { basis: 'both', ease: { as: 'garment', change } },
  });
});

it('leaves a chosen ease where no garment gave one', () => {
  const ease = { category: 'loose', place: 0.5 };
  const design = (basis: string) => ({ basis, ease, easeChange: change });
  const without = { ...green, measures: [] };
  expect(requestFromEarlier({ garment: green, design: design('body') })).toHaveProperty('design', {
    basis: 'body',
    ease,
  });
  expect(requestFromEarlier({ garment: without, design: design('both') })).toHaveProperty('design', {
    basis: 'both',
    ease,
  });
});

it('leaves what has the shape of now, and what is no request', () => {
  const now = { garments: [green], design: { basis: null, ease: null } };
  expect(requestFromEarlier(now)).toEqual(now);
  for (const other of [null, 3, 'text', []]) expect(requestFromEarlier(other)).toEqual(other);
});
