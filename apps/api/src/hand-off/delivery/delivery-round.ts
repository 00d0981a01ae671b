import { Injectable, Logger, type BeforeApplicationShutdown, type OnApplicationBootstrap } from '@nestjs/common';
import { setTimeout as delay } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { placeOf } from '../../http/problem-of.ts';
import { UnitOfWork } from '../../storage/unit-of-work.ts';
import { Courier } from './courier.ts';
import { isLapsing, type Claimed } from './claimed.ts';
import { Deliveries, type Outcome } from './deliveries.ts';
import { InHand } from './in-hand.ts';
import { PlannerPost } from './post.ts';
import { Waking } from './waking.ts';

/** How long to wait before looking for what has become due, when nobody calls. */
const LOOK_MS = 500;
/** Turns follow each other no faster: what happens between them is written down together, in one commit. */
const GATHER_MS = 50;
/** After a turn that failed. */
const RECOVER_MS = 1_000;
/** When the application closes, what is on its way has so long to arrive. */
const LAST_MS = 3_000;

/**
 * Empties the outbox: in each turn it writes down, in one unit of work, what came of earlier tries and takes what is due,
 * then sends that. A process that dies between sending and writing down leaves the hand-off to be sent again with the same
 * id: it arrives at least once.
 */
@Injectable()
export class DeliveryRound implements OnApplicationBootstrap, BeforeApplicationShutdown {
  private readonly logger = new Logger('HandOff');
  private readonly waking = new Waking();
  private readonly inHand = new InHand();
  private readonly outcomes: Outcome[] = [];
  private closing = false;
  private running: Promise<void> = Promise.resolve();

  constructor(
    private readonly work: UnitOfWork,
    private readonly dataSource: DataSource,
    private readonly deliveries: Deliveries,
    private readonly courier: Courier,
    private readonly post: PlannerPost,
  ) {}

  /** Something is due now and need not wait for the next look. */
  nudge(): void {
    this.waking.wake();
  }

  onApplicationBootstrap(): void {
    this.running = this.run();
  }

  /** What is on its way may arrive; what does not is left to be sent after the next start. */
  async beforeApplicationShutdown(): Promise<void> {
    if (this.closing) return;
    this.closing = true;
    this.nudge();
    await this.running;
    await Promise.race([this.inHand.empty(), delay(LAST_MS, undefined, { ref: false })]);
    const left = this.inHand.ids;
    this.post.close();
    await this.inHand.empty();
    const settled = this.outcomes.filter(({ attempt }) => !left.includes(attempt.handOffId));
    await this.work.write(async (manager) => {
      await this.deliveries.settle(manager, settled);
      await this.deliveries.release(manager, left);
    });
  }

  private async run(): Promise<void> {
    await this.safely(() => this.takeOver());
    while (!this.closing) {
      const done = await this.safely(() => this.turn());
      await this.waking.sleep(done ? GATHER_MS : RECOVER_MS, LOOK_MS);
    }
  }

  /** An embedded database has no other process: what the one before had in hand is free. */
  private async takeOver(): Promise<void> {
    if (this.dataSource.options.type === 'postgres') return;
    await this.work.write((manager) => this.deliveries.release(manager));
  }

  private async turn(): Promise<void> {
    const settled = [...this.outcomes];
    const claimed = await this.work.write(async (manager) => {
      await this.deliveries.settle(manager, settled);
      return this.deliveries.claim(manager, this.inHand.room, new Date());
    });
    this.outcomes.splice(0, settled.length);
    for (const each of claimed) this.inHand.take(each, () => this.deliver(each));
  }

  private async deliver(claimed: Claimed): Promise<void> {
    if (this.closing || isLapsing(claimed, new Date())) return;
    await this.safely(async () => void this.outcomes.push(await this.courier.deliver(claimed)));
    this.nudge();
  }

  /** What fails here is a fault of ours; it is logged, and what was in hand comes free by itself. */
  private async safely(step: () => Promise<void>): Promise<boolean> {
    try {
      await step();
      return true;
    } catch (error) {
      this.logger.error(placeOf(error));
      return false;
    }
  }
}
