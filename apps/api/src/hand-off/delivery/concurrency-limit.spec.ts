import { expect, it } from 'vitest';
import { ConcurrencyLimit } from './concurrency-limit.ts';

it('runs as many tasks at once as its limit, in their order, also after one has failed', async () => {
  const limit = new ConcurrencyLimit(2);
  const begun: number[] = [];
  const gates: (() => void)[] = [];
  const run = (index: number, fails = false) =>
    limit.run(async () => {
      begun.push(index);
      await new Promise<void>((gate) => gates.push(gate));
      if (fails) throw new Error('failed');
      return index;
    });
  const all = Promise.allSettled([run(0, true), run(1), run(2), run(3)]);
  const finishOne = async (): Promise<void> => {
    gates.shift()?.();
    await new Promise((done) => setImmediate(done));
  };
  expect(begun).toEqual([0, 1]);
  await finishOne();
  expect(begun).toEqual([0, 1, 2]);
  await finishOne();
  expect(begun).toEqual([0, 1, 2, 3]);
  expect(limit.isIdle).toBe(false);
  await finishOne();
  await finishOne();
  expect((await all).map(({ status }) => status)).toEqual(['rejected', 'fulfilled', 'fulfilled', 'fulfilled']);
  expect(limit.isIdle).toBe(true);
});
