import { setTimeout as delay } from 'node:timers/promises';

/** A sleep that can be ended by a call. A call that comes while nobody sleeps ends the next sleep. */
export class Waking {
  private called = false;
  private wakeSleeper: () => void = () => undefined;

  wake(): void {
    this.called = true;
    this.wakeSleeper();
  }

  /** Sleeps `leastMs` whatever happens, then until it is called or `mostMs` more have passed. */
  async sleep(leastMs: number, mostMs: number): Promise<void> {
    await delay(leastMs);
    if (!this.called) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, mostMs);
        this.wakeSleeper = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    this.called = false;
  }
}
