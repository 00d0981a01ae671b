import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { DATABASES, emptyDatabase, type EmptyDatabase } from '../support/databases.ts';
import { keptTitles, load } from './load.ts';

describe.each(DATABASES)('under load on %s', (kind) => {
  let database: EmptyDatabase;
  let api: ApiProcess;
  beforeAll(buildApi);
  beforeEach(async () => {
    database = await emptyDatabase(kind);
    api = await ApiProcess.start(database.env);
  });
  afterEach(async () => {
    await api.stop();
    await database.remove();
  });

  it('SIGTERM loses nothing that was acknowledged, five times over', async () => {
    const writing = load(() => api, 16);
    for (let round = 1; round <= 5; round++) {
      const before = writing.result.acknowledged.size;
      await expect.poll(() => writing.result.acknowledged.size, { timeout: 60_000 }).toBeGreaterThan(before + 100);
      expect(await api.signal('SIGTERM')).toBe(0);
      api = await ApiProcess.start(database.env);
    }
    await writing.stop();
    const kept = await keptTitles(api);
    expect([...writing.result.acknowledged].filter((title) => !kept.has(title))).toEqual([]);
    expect([...writing.result.statuses.keys()].filter((status) => ![0, 201, 503].includes(status))).toEqual([]);
  });

  it('kill -9 loses nothing that was acknowledged, ten times over', async () => {
    const writing = load(() => api, 16);
    for (let round = 1; round <= 10; round++) {
      const before = writing.result.acknowledged.size;
      await expect.poll(() => writing.result.acknowledged.size, { timeout: 60_000 }).toBeGreaterThan(before + 50);
      await api.killNine();
      api = await ApiProcess.start(database.env);
    }
    await writing.stop();
    const kept = await keptTitles(api);
    expect([...writing.result.acknowledged].filter((title) => !kept.has(title))).toEqual([]);
  });
});
