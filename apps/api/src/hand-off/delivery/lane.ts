/** Lets so many pass at once; the others wait in the order of arrival. */
export class Lane {
  private readonly waiting: (() => void)[] = [];
  private passing = 0;

  constructor(private readonly width: number) {}

  async pass<T>(work: () => Promise<T>): Promise<T> {
    if (this.passing === this.width) await new Promise<void>((next) => this.waiting.push(next));
    else this.passing++;
    try {
      return await work();
    } finally {
      const next = this.waiting.shift();
      if (next) next();
      else this.passing--;
    }
  }

  get isEmpty(): boolean {
    return this.passing === 0;
  }
}
