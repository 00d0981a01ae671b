import { randomBytes } from 'node:crypto';
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DailyCopies } from '../../apps/api/src/backup/daily-copies.ts';
import { makeBackup } from '../../apps/api/src/backup/make-backup.ts';
import { restoreBackup } from '../../apps/api/src/backup/restore-backup.ts';
import { makeApp } from '../../apps/api/src/app.ts';
import { settingsFrom } from '../../apps/api/src/settings/settings.ts';
import { runApp, type RunningApp } from '../support/app.ts';
import { buildApi } from '../support/api-process.ts';
import { DATABASES, emptyDatabase } from '../support/databases.ts';
import { exampleFabric } from '../support/examples.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { otherProgram } from '../support/other-program.ts';

/** From each database into each. */
const MOVES = DATABASES.flatMap((from) => DATABASES.map((to) => [from, to] as const));
const KEY = randomBytes(32).toString('base64');

let folder: string;
beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), 'easewright-backup-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const databaseOf = (api: RunningApp) => settingsFrom(api.env).database;
const exportOf = async (api: RunningApp) =>
  (await api.http.get('/v1/export').expect(200)).body as Record<string, object[]>;
const keepSome = async (api: RunningApp) => {
  await keepExampleSheet(api);
  const { id } = (await api.http.post('/v1/planners').send({ title: 'x', address: 'https://planner.example/' })).body;
  await api.http.post(`/v1/planners/${id}/pause`).expect(200);
  const sheet = (await api.http.get('/v1/target-sheets')).body.items[0].id as string;
  await api.http.post(`/v1/target-sheets/${sheet}/hand-offs`).send({ plannerId: id }).expect(201);
  await api.http.post('/v1/read-keys').send({ title: 'x' }).expect(201);
};

describe.each(MOVES)('a backup of %s restored into %s', (from, to) => {
  it('brings back all that was kept when it was made, and nothing that was kept since', async () => {
    const source = await runApp(from, { HANDOFF_KEY: KEY });
    await keepSome(source);
    const before = await exportOf(source);
    const file = join(folder, 'backup.sqlite');
    const contents = await makeBackup(databaseOf(source), file); // while the service runs
    expect(contents).toMatchObject({ body: 1, fabric: 1, target_sheet: 1, planner: 1, hand_off: 1, read_key: 1 });
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(readdirSync(folder)).toEqual(['backup.sqlite']);
    await source.stop();

    const target = await emptyDatabase(to);
    const env = { ...target.env, HANDOFF_KEY: KEY, BACKUPS_KEPT: '0' };
    const other = await makeApp(env);
    await other.init();
    await other.close();
    await restoreBackup(settingsFrom(env).database, file);
    const restored = await runApp(to, { ...env, HANDOFF_KEY: KEY });
    expect(await exportOf(restored)).toEqual(before);
    const [planner] = before['planners'] as { id: string }[];
    const handOffs = (await restored.http.get(`/v1/hand-offs?planner=${planner?.id}`)).body.items;
    expect(handOffs).toHaveLength(1);
    await restored.stop();
    await target.remove();
  });
});

describe('a restore', () => {
  it('changes nothing where the backup is damaged, is none, is newer, or the service runs', async () => {
    const api = await runApp('sqlite');
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    const good = join(folder, 'good.sqlite');
    await makeBackup(databaseOf(api), good);
    await expect(restoreBackup(databaseOf(api), good)).rejects.toThrow('is in use by another Easewright');
    const kept = await exportOf(api);
    await api.app.close();

    const bytes = readFileSync(good);
    writeFileSync(join(folder, 'cut.sqlite'), bytes.subarray(0, bytes.length / 2));
    writeFileSync(join(folder, 'other.txt'), 'no database');
    copyFileSync(good, join(folder, 'newer.sqlite'));
    const newer = await otherProgram(join(folder, 'newer.sqlite'));
    await newer.run(`INSERT INTO migrations (timestamp, name) VALUES (9999999999999, 'Newer9999999999999')`);
    await newer.close();
    for (const [name, line] of [
      ['cut.sqlite', 'is no backup of Easewright'],
      ['other.txt', 'is no backup of Easewright'],
      ['newer.sqlite', 'was made by a newer Easewright (Newer9999999999999)'],
      ['none.sqlite', 'There is no file'],
    ] as const) {
      await expect(restoreBackup(databaseOf(api), join(folder, name)), name).rejects.toThrow(line);
    }
    const again = await runApp('sqlite', api.env);
    expect(await exportOf(again)).toEqual(kept);
    await again.stop();
    await api.stop().catch(() => undefined);
  });

  it('leaves what was there before beside it', async () => {
    const api = await runApp('sqlite');
    const file = join(folder, 'backup.sqlite');
    await makeBackup(databaseOf(api), file);
    await expect(makeBackup(databaseOf(api), file)).rejects.toThrow('is there already');
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    const kept = await exportOf(api);
    await api.app.close();
    const { before } = await restoreBackup(databaseOf(api), file);
    await restoreBackup(databaseOf(api), before ?? '');
    const again = await runApp('sqlite', api.env);
    expect(await exportOf(again)).toEqual(kept);
    await again.stop();
  });

  it('is two commands', async () => {
    await buildApi();
    const api = await runApp('sqlite');
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    const run = (...args: string[]) =>
      execFileSync(process.execPath, ['dist/apps/api/src/backup/main.js', ...args], {
        env: { ...process.env, ...api.env },
        encoding: 'utf8',
      });
    expect(run('backup', join(folder, 'a.sqlite'))).toMatch(/^.*a\.sqlite: 0 body, 0 garment, 1 fabric, .*\n$/);
    await api.app.close();
    expect(run('restore', join(folder, 'a.sqlite'))).toMatch(/^Restored from .*: .*1 fabric.*before-restore\.\n$/);
  });
});

describe('daily copies', () => {
  it('are made once a day, the newest kept, while anything is kept, and erased with everything', async () => {
    const api = await runApp('sqlite');
    const copies = new DailyCopies(databaseOf(api), 3);
    const names = () => readdirSync(join(api.env['DATA_DIR'] ?? '', 'backups'));
    const day = (date: number) => copies.copyIfDue(new Date(Date.UTC(2030, 0, date)));
    await day(1);
    expect(names()).toEqual([]);
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    for (const date of [1, 1, 2, 3, 4, 5]) await day(date);
    expect(names()).toEqual([
      'easewright-2030-01-03.sqlite',
      'easewright-2030-01-04.sqlite',
      'easewright-2030-01-05.sqlite',
    ]);
    await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
    expect(names()).toEqual([]);
    await api.stop();
  });
});
