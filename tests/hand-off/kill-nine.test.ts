import { setTimeout as delay } from 'node:timers/promises';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { DATABASES, emptyDatabase, type EmptyDatabase } from '../support/databases.ts';
import { exampleBody, exampleDesign, exampleFabric } from '../support/examples.ts';
import { RealPlanner } from '../support/real-planner.ts';
import { until } from '../support/until.ts';

const HAND_OFFS = 500;
const SENDERS = 8;
const KILLS = 8;

/** One or more API processes on one database; any of them can be killed and is started again. */
class Processes {
  private readonly running: ApiProcess[] = [];

  constructor(private readonly env: Record<string, string | undefined>) {}

  async start(count: number): Promise<void> {
    for (let index = 0; index < count; index++) this.running.push(await ApiProcess.start(this.env));
  }

  async killOne(): Promise<void> {
    const index = Math.floor(Math.random() * this.running.length);
    await this.running[index]?.killNine();
    this.running[index] = await ApiProcess.start(this.env);
  }

  async stop(): Promise<void> {
    await Promise.all(this.running.map((each) => each.stop()));
  }

  /** A request as a careful client makes it: again, with the same key, until it is answered. */
  async ask(method: string, path: string, body?: object, key?: string): Promise<Record<string, string>> {
    return until(async () => {
      const api = this.running[Math.floor(Math.random() * this.running.length)];
      try {
        const response = await fetch(`${api?.url}${path}`, {
          method,
          headers: { 'content-type': 'application/json', ...(key !== undefined && { 'idempotency-key': key }) },
          ...(body && { body: JSON.stringify(body) }),
        });
        const answer = (await response.json()) as Record<string, string>;
        if (!response.ok) throw new Refused(JSON.stringify(answer));
        return answer;
      } catch (error) {
        if (error instanceof Refused) throw error;
        return null; // cut off by a kill, or nobody there
      }
    }) as Promise<Record<string, string>>;
  }
}

/** The API answered, but not as it should. */
class Refused extends Error {}

const setUps = DATABASES.map((kind) => [kind, kind === 'postgres' ? 2 : 1] as const);

describe.each(setUps)('kill -9 during hand-offs on %s with %i process(es)', (kind, count) => {
  let database: EmptyDatabase;
  let processes: Processes;
  let planner: RealPlanner;
  beforeAll(buildApi);
  beforeEach(async () => {
    database = await emptyDatabase(kind);
    processes = new Processes({ ...database.env, HANDOFF_ALLOW: 'loopback' });
    await processes.start(count);
    planner = await RealPlanner.start();
  });
  afterEach(async () => {
    await processes.stop();
    await planner.stop();
    await database.remove();
  });

  const register = async () => {
    const { id: bodyId } = await processes.ask('POST', '/v1/bodies', exampleBody);
    const { id: fabricId } = await processes.ask('POST', '/v1/fabrics', exampleFabric);
    const request = { bodyId, fabricId, design: exampleDesign };
    const { id: sheetId } = await processes.ask('POST', '/v1/target-sheets', request);
    const { id: plannerId } = await processes.ask('POST', '/v1/planners', { title: 'x', address: planner.address });
    return { sheetId, plannerId };
  };

  it(`loses none of ${HAND_OFFS}, and brings each under one id`, { timeout: 180_000 }, async () => {
    // A planner of flesh and blood: quick, slow, and sometimes failing.
    planner.answers((_received, response) => {
      response.statusCode = Math.random() < 0.02 ? 500 : 200;
      setTimeout(() => response.end(), Math.random() * 30);
    });
    const { sheetId, plannerId } = await register();
    const accepted = new Map<string, string>();
    const keys = Array.from({ length: HAND_OFFS }, (_, index) => `hand-off-${index}`);
    const left = [...keys];
    const sender = async (): Promise<void> => {
      for (let key = left.pop(); key !== undefined; key = left.pop()) {
        const { id = '' } = await processes.ask('POST', `/v1/target-sheets/${sheetId}/hand-offs`, { plannerId }, key);
        accepted.set(key, id);
      }
    };
    const killer = async (): Promise<void> => {
      const points = Array.from({ length: KILLS }, () => Math.floor(Math.random() * HAND_OFFS)).sort((a, b) => a - b);
      for (const point of points) {
        await until(() => accepted.size >= point);
        await delay(Math.random() * 50);
        await processes.killOne();
      }
    };
    await Promise.all([killer(), ...Array.from({ length: SENDERS }, sender)]);

    const ids = [...accepted.values()];
    expect(new Set(ids).size).toBe(HAND_OFFS);
    // What a killed process of several had in hand comes free after half a minute.
    await until(() => ids.every((id) => planner.receivedAs(id).length > 0), 90_000);
    await until(async () => {
      const { items } = (await processes.ask('GET', '/v1/hand-offs?state=waiting')) as unknown as { items: object[] };
      return items.length === 0;
    }, 90_000);
    const received = new Set(planner.received.map(({ headers }) => headers['webhook-id']));
    expect(received).toEqual(new Set(ids));
    expect(new Set(planner.received.map(({ body }) => body)).size).toBe(1);
    for (const key of [keys[0], keys.at(-1)]) {
      const again = await processes.ask('POST', `/v1/target-sheets/${sheetId}/hand-offs`, { plannerId }, key);
      expect(again['id']).toBe(accepted.get(key ?? ''));
    }
  });
});
