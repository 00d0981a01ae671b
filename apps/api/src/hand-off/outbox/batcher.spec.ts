import { describe, expect, it } from 'vitest';
import { Batcher } from './batcher.ts';

/** Doubles numbers, refuses odd ones, and fails at a zero; notes which came in one batch. */
function doubling(largest = 10) {
  const batches: number[][] = [];
  const batcher = new Batcher<number, number>(largest, async (requests) => {
    batches.push([...requests]);
    await new Promise((done) => setTimeout(done, 5));
    if (requests.includes(0)) throw new Error('failed');
    return requests.map((request) => (request % 2 === 0 ? 2 * request : new Error(`${request} is odd`)));
  });
  return { batches, batcher };
}

describe('Batcher', () => {
  it('processes at once what comes first, and as one batch what comes meanwhile', async () => {
    const { batches, batcher } = doubling();
    expect(await Promise.all([2, 4, 6].map((each) => batcher.submit(each)))).toEqual([4, 8, 12]);
    expect(batches).toEqual([[2], [4, 6]]);
  });

  it('gives each request its own result', async () => {
    const { batcher } = doubling();
    const results = await Promise.allSettled([2, 3, 4].map((each) => batcher.submit(each)));
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  });

  it('rejects every request of a batch that failed, and goes on', async () => {
    const { batcher } = doubling();
    const results = await Promise.allSettled([2, 0, 4].map((each) => batcher.submit(each)));
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'rejected']);
    expect(await batcher.submit(6)).toBe(12);
  });

  it('keeps batches to their largest size', async () => {
    const { batches, batcher } = doubling(2);
    await Promise.all([2, 4, 6, 8].map((each) => batcher.submit(each)));
    expect(batches).toEqual([[2], [4, 6], [8]]);
  });
});
