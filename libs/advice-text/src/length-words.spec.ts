import { describe, expect, it } from 'vitest';
import { lengthWords } from './length-words.ts';

describe('a length in a sentence', () => {
  it.each([
    [17, 'cm', '1.7 cm'],
    [-20, 'cm', '2 cm'],
    [444.5, 'in', '17 1/2 in'],
    [-3.2, 'in', '1/8 in'],
  ] as const)('%s mm on a tape in %s is %s', (mm, tape, words) => {
    expect(lengthWords(mm, tape)).toBe(words);
  });
});
