import { Client } from 'pg';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { emptyDatabase, type EmptyDatabase } from '../support/databases.ts';
import { until } from '../support/until.ts';
import { keptTitles, load } from './load.ts';

const statusOf = (api: ApiProcess, path: string) => fetch(`${api.url}${path}`).then(({ status }) => status);

describe('PostgreSQL under load', () => {
  let database: EmptyDatabase;
  let api: ApiProcess;
  beforeAll(buildApi);
  beforeEach(async () => {
    database = await emptyDatabase('postgres');
    api = await ApiProcess.start(database.env);
  });
  afterEach(async () => {
    await api.stop();
    await database.remove();
  });

  const ask = async (sql: string): Promise<Record<string, unknown>[]> => {
    const client = new Client({ connectionString: database.env['DATABASE_URL'] });
    client.on('error', () => undefined);
    await client.connect();
    try {
      return (await client.query(sql)).rows;
    } finally {
      await client.end().catch(() => undefined);
    }
  };
  const backends = async (): Promise<number[]> =>
    (await ask(`SELECT pid FROM pg_stat_activity WHERE application_name = 'easewright'`)).map(({ pid }) => Number(pid));
  const expectNothingLost = async (writing: ReturnType<typeof load>) => {
    await writing.stop();
    const kept = await keptTitles(api);
    expect([...writing.result.acknowledged].filter((title) => !kept.has(title))).toEqual([]);
    expect([...writing.result.statuses.keys()].filter((status) => ![201, 503].includes(status))).toEqual([]);
  };

  it('that crashes and recovers by itself is reached again without a restart, and nothing is lost', async () => {
    const writing = load(() => api, 16);
    for (let round = 0; round < 3; round++) {
      const before = writing.result.acknowledged.size;
      await until(() => writing.result.acknowledged.size > before + 50);
      const [pid] = await backends();
      process.kill(pid ?? 0, 'SIGKILL'); // the server then ends every connection and recovers from its log
      await until(async () => (await statusOf(api, '/ready')) === 503 || writing.result.statuses.has(503));
      await until(async () => (await statusOf(api, '/ready')) === 200);
    }
    await expectNothingLost(writing);
  });

  it('that hangs is answered with 503, and is reached again when it goes on', async () => {
    const writing = load(() => api, 16);
    await until(() => writing.result.acknowledged.size > 50);
    const pids = await backends();
    for (const pid of pids) process.kill(pid, 'SIGSTOP');
    await until(() => writing.result.statuses.has(503), 90_000);
    expect(await statusOf(api, '/health')).toBe(200);
    for (const pid of pids) process.kill(pid, 'SIGCONT');
    await until(async () => (await statusOf(api, '/ready')) === 200, 90_000);
    await expectNothingLost(writing);
  });
});
