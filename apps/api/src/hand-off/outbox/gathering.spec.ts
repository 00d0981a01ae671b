import { describe, expect, it } from 'vitest';
import { Gathering } from './gathering.ts';

/** Doubles numbers, refuses odd ones, and falls over a zero; notes which came together. */
function doubling(most = 10) {
  const batches: number[][] = [];
  const gathering = new Gathering<number, number>(most, async (asks) => {
    batches.push([...asks]);
    await new Promise((done) => setTimeout(done, 5));
    if (asks.includes(0)) throw new Error('fell over');
    return asks.map((ask) => (ask % 2 === 0 ? 2 * ask : new Error(`${ask} is odd`)));
  });
  return { batches, gathering };
}

describe('Gathering', () => {
  it('works at once on what comes first, and together on what comes meanwhile', async () => {
    const { batches, gathering } = doubling();
    expect(await Promise.all([2, 4, 6].map((each) => gathering.ask(each)))).toEqual([4, 8, 12]);
    expect(batches).toEqual([[2], [4, 6]]);
  });

  it('answers each for itself', async () => {
    const { gathering } = doubling();
    const answers = await Promise.allSettled([2, 3, 4].map((each) => gathering.ask(each)));
    expect(answers.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  });

  it('tells all of a piece of work that fell over, and goes on', async () => {
    const { gathering } = doubling();
    const answers = await Promise.allSettled([2, 0, 4].map((each) => gathering.ask(each)));
    expect(answers.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'rejected']);
    expect(await gathering.ask(6)).toBe(12);
  });

  it('takes no more at once than it may', async () => {
    const { batches, gathering } = doubling(2);
    await Promise.all([2, 4, 6, 8].map((each) => gathering.ask(each)));
    expect(batches).toEqual([[2], [4, 6], [8]]);
  });
});
