import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { closeSync, mkdtempSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { exampleBody, exampleDesign, exampleFabric } from '../support/examples.ts';
import { load } from './load.ts';

/** More than SQLite keeps in memory, and than it leaves in its log. */
const SHEETS = 120;
const PAGE_BYTES = 4096;
/** The pages of the schema: a database is opened by these. */
const FIRST_PAGES = 24;

let folder: string;
let api: ApiProcess;
beforeAll(buildApi);
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'easewright-damaged-'));
  api = await start();
});
afterEach(async () => {
  await api.stop();
  rmSync(folder, { recursive: true });
});

const start = () => ApiProcess.start({ DATA_DIR: folder, BACKUPS_KEPT: '0', LOG_LEVEL: 'silent' });
/** Not synchronously: what waits for it would not notice that the API closes idle connections. */
const maintain = (...args: string[]) =>
  promisify(execFile)(process.execPath, ['dist/apps/api/src/backup/main.js', ...args], {
    env: { ...process.env, DATA_DIR: folder },
  });

async function post(path: string, body: object): Promise<{ readonly id: string }> {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(api.url + path, { method: 'POST', headers, body: JSON.stringify(body) });
  expect(response.status).toBe(201);
  return (await response.json()) as { id: string };
}

it('a database that is damaged while it is in use is said to be, and a backup brings everything back', async () => {
  const { id: bodyId } = await post('/v1/bodies', exampleBody);
  const { id: fabricId } = await post('/v1/fabrics', exampleFabric);
  for (let sheet = 0; sheet < SHEETS; sheet++)
    await post('/v1/target-sheets', { bodyId, fabricId, design: exampleDesign });
  const before = await (await fetch(`${api.url}/v1/export`)).text();
  const copy = join(folder, 'copy.sqlite');
  await maintain('backup', copy);

  const file = join(folder, 'easewright.sqlite');
  const damaged = openSync(file, 'r+');
  const bytes = statSync(file).size - FIRST_PAGES * PAGE_BYTES;
  expect(bytes).toBeGreaterThan(4_000_000);
  writeSync(damaged, randomBytes(bytes), 0, bytes, FIRST_PAGES * PAGE_BYTES);
  closeSync(damaged);

  const all = await fetch(`${api.url}/v1/export`);
  expect(all.status).toBe(503);
  expect(await all.json()).toMatchObject({ code: 'database-damaged', detail: expect.stringContaining('backup') });
  const writing = load(() => api, 4);
  for (let times = 0; times < 20; times++) {
    const list = await fetch(`${api.url}/v1/target-sheets?limit=100`);
    expect([200, 503]).toContain(list.status);
    await list.arrayBuffer();
  }
  await writing.stop();
  expect([...writing.result.statuses.keys()].filter((status) => ![201, 503].includes(status))).toEqual([]);
  expect((await fetch(`${api.url}/health`)).status).toBe(200);
  expect(await api.signal('SIGTERM')).toBe(0);

  await maintain('restore', copy);
  api = await start();
  expect(await (await fetch(`${api.url}/v1/export`)).text()).toBe(before);
});
