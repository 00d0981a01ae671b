import { expect, it } from 'vitest';
import { SteadyClock } from './steady-clock.ts';

const HOUR = 3_600_000;

it('follows the machine’s clock forward, and goes on at its own pace where that is set back', () => {
  let wall = 10 * HOUR;
  let ticks = 0;
  const clock = new SteadyClock(
    () => wall,
    () => ticks,
  );
  const pass = (ms: number) => {
    wall += ms;
    ticks += ms;
    return clock.now().getTime();
  };
  expect(pass(0)).toBe(10 * HOUR);
  expect(pass(1000)).toBe(10 * HOUR + 1000);
  wall -= HOUR;
  expect(pass(1000)).toBe(10 * HOUR + 2000);
  expect(pass(5000)).toBe(10 * HOUR + 7000);
  wall += 2 * HOUR;
  expect(pass(0)).toBe(11 * HOUR + 7000);
});
