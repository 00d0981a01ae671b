import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { until } from '../support/until.ts';
import { keptTitles, load } from './load.ts';

const MEGABYTES = 32;

/** A disk of its own, in a file; it needs root on Linux. */
describe('a disk that becomes read-only', () => {
  let folder: string;
  let api: ApiProcess | undefined;
  const [image, disk] = ['disk.img', 'disk'];
  const run = (command: string, ...args: string[]) => execFileSync(command, args, { cwd: folder, stdio: 'pipe' });
  const mount = (options: string) => run('mount', '-o', options, image, disk);
  beforeAll(buildApi);
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'easewright-read-only-'));
    mkdirSync(join(folder, disk));
    writeFileSync(join(folder, image), Buffer.alloc(MEGABYTES * 1024 * 1024));
    run('mkfs.ext4', '-q', image);
    mount('loop');
  });
  afterEach(async () => {
    await api?.stop();
    api = undefined;
    run('umount', disk);
    rmSync(folder, { recursive: true });
  });
  const start = async (): Promise<ApiProcess> =>
    (api = await ApiProcess.start({ DATA_DIR: join(folder, disk), BACKUPS_KEPT: '0', LOG_LEVEL: 'silent' }));

  it('under a running service is said, and nothing that was acknowledged before is lost', async () => {
    const service = await start();
    const writing = load(() => service, 8);
    await until(() => writing.result.acknowledged.size > 50);
    // In the very moment of the error ext4 itself was seen to answer well to an fsync that it lost: 1 in 12 times.
    const acknowledged = [...writing.result.acknowledged];
    // What the file system does after an error of the disk, with files open.
    mount('remount,abort');
    await until(() => writing.result.statuses.has(503));
    const ready = await fetch(`${service.url}/ready`);
    expect(ready.status).toBe(503);
    expect(await ready.text()).toMatch(/database-(read-only|unreachable)/);
    expect((await fetch(`${service.url}/health`)).status).toBe(200);
    await writing.stop();
    expect([...writing.result.statuses.keys()].sort()).toEqual([201, 503]);
    await service.stop();

    run('umount', disk);
    // 1: errors were corrected.
    expect([0, 1]).toContain(statusOf(() => run('e2fsck', '-fy', image)));
    mount('loop');
    const kept = await keptTitles(await start());
    expect(acknowledged.filter((title) => !kept.has(title))).toEqual([]);
  });

  it('is said in one line at a start, and the same file is used when it can be written', async () => {
    const writing = load(() => api as ApiProcess, 1);
    await start();
    await until(() => writing.result.acknowledged.size > 5);
    await writing.stop();
    await api?.stop();
    run('mount', '-o', 'remount,ro', disk);
    await expect(start()).rejects.toThrow(/^The API ended \(1\) and printed: [^\n]*\n$/);
    run('mount', '-o', 'remount,rw', disk);
    const kept = await keptTitles(await start());
    expect([...writing.result.acknowledged].filter((title) => !kept.has(title))).toEqual([]);
  });
});

function statusOf(run: () => unknown): number | null {
  try {
    run();
    return 0;
  } catch (error) {
    return (error as { status: number | null }).status;
  }
}
