import { setTimeout as delay } from 'node:timers/promises';

/** A wait that can be ended by a signal. One that comes while nobody waits ends the next wait. */
export class WakeSignal {
  private signalled = false;
  private endWait: () => void = () => undefined;

  wake(): void {
    this.signalled = true;
    this.endWait();
  }

  /** Waits `leastMs` in any case, then until the signal comes or `mostMs` more have passed. */
  async wait(leastMs: number, mostMs: number): Promise<void> {
    await delay(leastMs);
    if (!this.signalled) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, mostMs);
        this.endWait = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    this.signalled = false;
  }
}
