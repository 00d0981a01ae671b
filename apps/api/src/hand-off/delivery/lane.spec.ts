import { expect, it } from 'vitest';
import { Lane } from './lane.ts';

it('lets as many pass at once as it is wide, in their order, also after one has failed', async () => {
  const lane = new Lane(2);
  const begun: number[] = [];
  const gates: (() => void)[] = [];
  const walk = (index: number, fails = false) =>
    lane.pass(async () => {
      begun.push(index);
      await new Promise<void>((gate) => gates.push(gate));
      if (fails) throw new Error('stumbled');
      return index;
    });
  const all = Promise.allSettled([walk(0, true), walk(1), walk(2), walk(3)]);
  const settleOne = async (): Promise<void> => {
    gates.shift()?.();
    await new Promise((done) => setImmediate(done));
  };
  expect(begun).toEqual([0, 1]);
  await settleOne();
  expect(begun).toEqual([0, 1, 2]);
  await settleOne();
  expect(begun).toEqual([0, 1, 2, 3]);
  expect(lane.isEmpty).toBe(false);
  await settleOne();
  await settleOne();
  expect((await all).map(({ status }) => status)).toEqual(['rejected', 'fulfilled', 'fulfilled', 'fulfilled']);
  expect(lane.isEmpty).toBe(true);
});
