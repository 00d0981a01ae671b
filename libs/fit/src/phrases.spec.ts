import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Phrases } from './phrases.ts';

const whole = fc.oneof(fc.integer({ min: -2000, max: 2000 }), fc.integer({ min: -(2 ** 21), max: 2 ** 21 }));

describe('phrases', () => {
  it('are each what is made of their own words and numbers, however many came before', () => {
    const phrases = new Phrases();
    fc.assert(
      fc.property(fc.constantFrom('chest girth', 'across back'), whole, whole, (about, first, second) => {
        const made = `${first} ${about} ${second}`.replace(/-0\b/, '0');
        expect(phrases.of(about, first, second, () => made)).toBe(made);
      }),
      { numRuns: 20_000 },
    );
  });

  it('are made once', () => {
    const phrases = new Phrases();
    let made = 0;
    const say = (first: number) => phrases.of('chest girth', first, 0, () => `said ${++made}`);
    expect([say(500), say(500), say(-500), say(500)]).toEqual(['said 1', 'said 1', 'said 2', 'said 1']);
  });

  it('are forgotten before they fill the memory', () => {
    const phrases = new Phrases();
    let made = 0;
    const say = (first: number) => phrases.of('chest girth', first, 0, () => `said ${++made}`);
    for (let first = 0; first <= 5000; first++) say(first);
    say(0);
    expect(made).toBe(5002);
  });
});
