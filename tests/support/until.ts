import { setTimeout as delay } from 'node:timers/promises';

/** Waits for something to come about, and hands it on; fails after a time that only a hang would take. */
export async function until<T>(look: () => T | Promise<T>, patienceMs = 45_000): Promise<NonNullable<T> & (T | true)> {
  const end = Date.now() + patienceMs;
  for (;;) {
    const seen = await look();
    if (seen) return seen as NonNullable<T> & (T | true);
    if (Date.now() > end) throw new Error(`It did not come about within ${patienceMs / 1000} s: ${String(look)}`);
    await delay(50);
  }
}
