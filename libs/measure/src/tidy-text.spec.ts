import { describe, expect, it } from 'vitest';
import { tidyText } from './tidy-text.ts';

describe('tidyText', () => {
  it.each([
    ['17½″', '17 1/2"'],
    ['½', '1/2'],
    ['17 ¾', '17 3/4'],
    ['17-⅜', '17-3/8'],
    ['17\u00A01\u20442\u2009in', '17 1/2 in'],
    ['5\u20324\u2033', '5\'4"'],
    ['5’4”', '5\'4"'],
    ["17''", '17"'],
    ['17–1/2', '17-1/2'],
    ['−3 cm', '-3 cm'],
    ['４４．５ｃｍ', '44.5cm'],
    ['44㎝', '44cm'],
    ['  44  CM\n', '44 cm'],
    ['4\u200B4', '44'],
  ])('%j becomes %j', (typed, tidy) => {
    expect(tidyText(typed)).toBe(tidy);
  });

  it('leaves a superscript alone: 17² is not 172', () => {
    expect(tidyText('17²')).toBe('17²');
  });
});
