import { Injectable, Logger, type BeforeApplicationShutdown, type OnApplicationBootstrap } from '@nestjs/common';
import { setTimeout as delay } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { clock } from '../../clock/steady-clock.ts';
import { errorPlace } from '../../log/error-place.ts';
import { Outage } from '../../storage/outage.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { isExpiring, type Claim } from './claim.ts';
import { HandOffSender } from './hand-off-sender.ts';
import { InFlight } from './in-flight.ts';
import { OutboxQueue, type Outcome } from './outbox-queue.ts';
import { PlannerPost } from './post.ts';
import { WakeSignal } from './wake-signal.ts';

/** How long to wait before looking for what has become due, when nothing wakes the worker. */
const POLL_MS = 500;
/** Batches follow each other no faster: what happens between them is written in one commit. */
const BATCH_MS = 50;
/** After a batch that failed. */
const RECOVER_MS = 1_000;
/** When the application closes, requests that are under way have so long to be answered. */
const DRAIN_MS = 3_000;

/**
 * Empties the outbox: with each batch it writes the outcomes of earlier attempts and claims what is due, in one unit of
 * work, then sends that. A process that dies between sending and writing leaves the hand-off to be sent again with the same
 * id: delivery is at least once.
 */
@Injectable()
export class OutboxWorker implements OnApplicationBootstrap, BeforeApplicationShutdown {
  private readonly logger = new Logger('OutboxWorker');
  private readonly signal = new WakeSignal();
  private readonly inFlight = new InFlight();
  private readonly outcomes: Outcome[] = [];
  private closing = false;
  private running: Promise<void> = Promise.resolve();

  constructor(
    private readonly work: UnitOfWork,
    private readonly dataSource: DataSource,
    private readonly queue: OutboxQueue,
    private readonly sender: HandOffSender,
    private readonly post: PlannerPost,
  ) {}

  /** Something is due now and need not wait for the next poll. */
  wake(): void {
    this.signal.wake();
  }

  onApplicationBootstrap(): void {
    this.running = this.run();
  }

  /** Requests under way may be answered; what is not is left to be sent after the next start. */
  async beforeApplicationShutdown(): Promise<void> {
    if (this.closing) return;
    this.closing = true;
    this.wake();
    await this.running;
    await Promise.race([this.inFlight.drained(), delay(DRAIN_MS, undefined, { ref: false })]);
    const unfinished = this.inFlight.ids;
    this.post.close();
    await this.inFlight.drained();
    const finished = this.outcomes.filter(({ attempt }) => !unfinished.includes(attempt.handOffId));
    await this.logged(() =>
      this.work.write(async (manager) => {
        await this.queue.record(manager, finished);
        await this.queue.release(manager, unfinished);
      }),
    );
  }

  private async run(): Promise<void> {
    await this.logged(() => this.recover());
    while (!this.closing) {
      const succeeded = await this.logged(() => this.batch());
      await this.signal.wait(succeeded ? BATCH_MS : RECOVER_MS, POLL_MS);
    }
  }

  /**
   * An embedded database has no other process: what the one before had claimed is free. What was made "later" than now was
   * made before the clock was set back, and would wait for as long again: it is due.
   */
  private async recover(): Promise<void> {
    if (this.dataSource.options.type === 'postgres') return;
    await this.work.write(async (manager) => {
      await this.queue.release(manager);
      await this.queue.makeDueIfFromFuture(manager, clock.now());
    });
  }

  private async batch(): Promise<void> {
    const finished = [...this.outcomes];
    const claims = await this.work.write(async (manager) => {
      await this.queue.record(manager, finished);
      return this.queue.claim(manager, this.inFlight.capacity, clock.now());
    });
    this.outcomes.splice(0, finished.length);
    for (const claim of claims) this.inFlight.add(claim, () => this.deliver(claim));
  }

  private async deliver(claim: Claim): Promise<void> {
    if (this.closing || isExpiring(claim, clock.now())) return;
    await this.logged(async () => void this.outcomes.push(await this.sender.deliver(claim)));
    this.wake();
  }

  /** What fails here is logged; the claims expire by themselves, and the next batch tries again. */
  private async logged(step: () => Promise<void>): Promise<boolean> {
    try {
      await step();
      return true;
    } catch (error) {
      this.logger.error(error instanceof Outage ? `The database: ${error.reason}` : errorPlace(error));
      return false;
    }
  }
}
