/** A request that waits, and how it learns what came of it. */
interface Waiting<Ask, Answer> {
  readonly ask: Ask;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Lets requests that come while others are being worked on share the next piece of work: one commit for all of them. A
 * request that comes alone does not wait.
 */
export class Gathering<Ask, Answer> {
  private waiting: Waiting<Ask, Answer>[] = [];
  private working = false;

  /** `together` answers each request, in their order, or says why not; what it throws goes to all. */
  constructor(
    private readonly most: number,
    private readonly together: (asks: readonly Ask[]) => Promise<readonly (Answer | Error)[]>,
  ) {}

  ask(ask: Ask): Promise<Answer> {
    return new Promise((resolve, reject) => {
      this.waiting.push({ ask, resolve, reject });
      if (!this.working) void this.work();
    });
  }

  private async work(): Promise<void> {
    this.working = true;
    while (this.waiting.length > 0) await this.answer(this.waiting.splice(0, this.most));
    this.working = false;
  }

  private async answer(batch: readonly Waiting<Ask, Answer>[]): Promise<void> {
    try {
      const answers = await this.together(batch.map(({ ask }) => ask));
      for (const [index, { resolve, reject }] of batch.entries()) {
        const answer = answers[index];
        if (answer instanceof Error || answer === undefined) reject(answer);
        else resolve(answer);
      }
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  }
}
