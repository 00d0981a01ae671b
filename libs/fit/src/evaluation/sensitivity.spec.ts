import { describe, expect, it } from 'vitest';
import { requestOf, womanWith } from '../../../../tests/support/fit-samples.ts';
import { sensitivities } from './sensitivity.ts';

describe('the sensitivity of a dimension to the measures of the body', () => {
  it('is how it moves with each', () => {
    const [width, sleeve, length] = sensitivities(requestOf(), ['chest-width', 'sleeve-length', 'centre-back-length']);
    expect(width).toEqual({ 'chest-girth': 0.5 });
    expect(sleeve).toEqual({ 'chest-girth': -0.25, 'nape-to-cuff': 1 });
    expect(length).toEqual({ 'back-waist-length': 1 });
  });

  it('is none to a measure that is not known, or of a dimension that the design does not have', () => {
    const request = requestOf({ body: womanWith({ 'wrist-girth': undefined }) });
    expect(sensitivities(request, ['cuff-width', 'raglan-depth'])).toEqual([{}, {}]);
  });
});
