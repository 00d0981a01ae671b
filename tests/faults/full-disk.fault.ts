import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { until } from '../support/until.ts';
import { keptTitles, load } from './load.ts';

/** Room on the disk; a mount needs root on Linux. */
const MEGABYTES = 4;

describe('a disk that is full', () => {
  let folder: string;
  let api: ApiProcess | undefined;
  beforeAll(buildApi);
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'easewright-full-'));
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${MEGABYTES}m`, 'tmpfs', folder]);
  });
  afterEach(async () => {
    await api?.stop();
    api = undefined;
    execFileSync('umount', [folder]);
    rmSync(folder, { recursive: true });
  });

  const ballast = () => join(folder, 'ballast');
  const fill = (): void => {
    for (let size = MEGABYTES * 1024 * 1024; size >= 512; size /= 2) {
      try {
        writeFileSync(ballast(), Buffer.alloc(size), { flag: 'a' });
      } catch {
        // as much as there was room for
      }
    }
  };
  const start = async (): Promise<ApiProcess> =>
    (api = await ApiProcess.start({ DATA_DIR: folder, BACKUPS_KEPT: '0', LOG_LEVEL: 'silent' }));
  const answer = async (path: string, method = 'GET') => {
    const response = await fetch(`${api?.url}${path}`, { method });
    return { status: response.status, text: await response.text() };
  };

  it('refuses writes, tells so, erases what is asked, and goes on when there is room', async () => {
    const service = await start();
    const writing = load(() => service, 8);
    await until(() => writing.result.acknowledged.size > 20);
    fill();
    await until(() => writing.result.statuses.has(503));
    expect((await answer('/ready')).text).toContain('database-full');
    expect((await answer('/health')).status).toBe(200);
    rmSync(ballast());
    await until(async () => (await answer('/ready')).status === 200);
    await writing.stop();
    const kept = await keptTitles(service);
    expect([...writing.result.acknowledged].filter((title) => !kept.has(title))).toEqual([]);
    expect([...writing.result.statuses.keys()].sort()).toEqual([201, 503]);
  });

  it('never answers an erasure with what is not so', async () => {
    const service = await start();
    const writing = load(() => service, 8);
    await until(() => writing.result.acknowledged.size > 50);
    await writing.stop();
    fill();
    const { status, text } = await answer('/v1/everything?confirm=erase-everything', 'DELETE');
    const kept = await keptTitles(service);
    if (status === 503) {
      expect(text).toContain('Nothing was written.');
      expect(kept.size).toBeGreaterThan(0);
    } else {
      expect([200, 204]).toContain(status);
      expect(kept.size).toBe(0);
    }
    rmSync(ballast());
  });

  it('is said in one line at a start', async () => {
    fill();
    await expect(start()).rejects.toThrow(
      /The API ended \(1\) and printed: [^\n]*(ENOSPC|disk is full|SQLITE_FULL)[^\n]*\n?$/,
    );
    rmSync(ballast());
  });

  it('is said in one line by a backup, which leaves nothing half written', async () => {
    const service = await start();
    const writing = load(() => service, 8);
    await until(() => writing.result.acknowledged.size > 50);
    await writing.stop();
    fill();
    const run = () =>
      execFileSync(process.execPath, ['dist/apps/api/src/backup/main.js', 'backup', join(folder, 'copy.sqlite')], {
        env: { ...process.env, DATA_DIR: folder },
        encoding: 'utf8',
        stdio: 'pipe',
      });
    expect(run).toThrow(/disk is full|ENOSPC|SQLITE_FULL|written/);
    expect(execFileSync('ls', [folder], { encoding: 'utf8' })).not.toContain('copy.sqlite');
    rmSync(ballast());
    expect(run()).toContain('copy.sqlite: 0 body');
  });
});
