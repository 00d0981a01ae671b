/** A request that waits for its batch. */
interface Waiting<Request, Result> {
  readonly request: Request;
  readonly resolve: (result: Result) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Processes the requests that come while a batch is under way as one batch afterwards: one commit for all of them. A request
 * that comes alone does not wait.
 */
export class Batcher<Request, Result> {
  private waiting: Waiting<Request, Result>[] = [];
  private isRunning = false;

  /** `process` gives a result or an error for each request, in their order; what it throws goes to all. */
  constructor(
    private readonly largest: number,
    private readonly process: (requests: readonly Request[]) => Promise<readonly (Result | Error)[]>,
  ) {}

  submit(request: Request): Promise<Result> {
    return new Promise((resolve, reject) => {
      this.waiting.push({ request, resolve, reject });
      if (!this.isRunning) void this.run();
    });
  }

  private async run(): Promise<void> {
    this.isRunning = true;
    while (this.waiting.length > 0) await this.runBatch(this.waiting.splice(0, this.largest));
    this.isRunning = false;
  }

  private async runBatch(batch: readonly Waiting<Request, Result>[]): Promise<void> {
    try {
      const results = await this.process(batch.map(({ request }) => request));
      for (const [index, { resolve, reject }] of batch.entries()) {
        const result = results[index];
        if (result instanceof Error || result === undefined) reject(result);
        else resolve(result);
      }
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  }
}
