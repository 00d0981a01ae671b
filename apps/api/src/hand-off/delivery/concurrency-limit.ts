/** Runs so many tasks at once; the others wait in the order of arrival. */
export class ConcurrencyLimit {
  private readonly waiting: (() => void)[] = [];
  private running = 0;

  constructor(private readonly limit: number) {}

  async run<T>(task: () => Promise<T>): Promise<T> {
    if (this.running === this.limit) await new Promise<void>((next) => this.waiting.push(next));
    else this.running++;
    try {
      return await task();
    } finally {
      const next = this.waiting.shift();
      if (next) next();
      else this.running--;
    }
  }

  get isIdle(): boolean {
    return this.running === 0;
  }
}
