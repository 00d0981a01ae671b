import type { DataSource, EntityManager } from 'typeorm';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { THE_MAKER } from '../../apps/api/src/maker/maker-id.ts';
import { BODY } from '../../apps/api/src/records/record.entity.ts';
import { settingsFrom } from '../../apps/api/src/settings/settings.ts';
import { openDatabase } from '../../apps/api/src/storage/open-database.ts';
import { UnitOfWork } from '../../apps/api/src/storage/unit-of-work.ts';
import { DATABASES, emptyDatabase, type EmptyDatabase } from '../support/databases.ts';

type InTransaction = (work: (manager: EntityManager) => Promise<void>) => Promise<void>;

const row = (id: string) => {
  const now = new Date().toISOString();
  return { id, makerId: THE_MAKER, version: 1, createdAt: now, updatedAt: now, document: {} };
};

const milliseconds = (count: number) => new Promise<void>((resolve) => setTimeout(resolve, count));

/**
 * A inserts and fails, after B, started meanwhile, has inserted and reported success (or has been kept waiting for a while).
 * Gives what is in the table then.
 */
async function failBesideSuccess(dataSource: DataSource, transaction: InTransaction): Promise<string[]> {
  let aHasInserted = (): void => undefined;
  const whenAHasInserted = new Promise<void>((resolve) => (aHasInserted = resolve));
  const b = whenAHasInserted.then(() => transaction(async (manager) => void (await manager.insert(BODY, row('b')))));
  const a = transaction(async (manager) => {
    await manager.insert(BODY, row('a'));
    aHasInserted();
    await Promise.race([b, milliseconds(100)]);
    throw new Error('A fails');
  });
  await expect(a).rejects.toThrow('A fails');
  await b;
  return (await dataSource.manager.find(BODY)).map(({ id }) => id);
}

describe.each(DATABASES)('units of work on %s', (kind) => {
  let database: EmptyDatabase;
  let dataSource: DataSource;
  let work: UnitOfWork;
  beforeAll(async () => {
    database = await emptyDatabase(kind);
    dataSource = await openDatabase(settingsFrom(database.env).database);
    work = new UnitOfWork(dataSource);
  });
  beforeEach(async () => void (await dataSource.manager.clear(BODY)));
  afterAll(async () => {
    await dataSource.destroy();
    await database.remove();
  });

  it('keep the row of a unit that succeeded beside one that failed', async () => {
    expect(await failBesideSuccess(dataSource, (unit) => work.write(unit))).toEqual(['b']);
  });

  it.runIf(kind === 'sqlite')('need the queue: the driver alone loses that row', async () => {
    expect(await failBesideSuccess(dataSource, (unit) => dataSource.transaction(unit))).not.toContain('b');
  });

  it('do not show half of what another is writing', async () => {
    let aIsThere = (): void => undefined;
    const whenAIsThere = new Promise<void>((resolve) => (aIsThere = resolve));
    const writing = work.write(async (manager) => {
      await manager.insert(BODY, row('a'));
      aIsThere();
      await milliseconds(50);
      await manager.insert(BODY, row('b'));
    });
    const reading = whenAIsThere.then(() => work.read((manager) => manager.count(BODY)));
    expect([0, 2]).toContain(await reading);
    await writing;
  });

  it('leave nothing of a unit that failed', async () => {
    const failing = work.write(async (manager) => {
      await manager.insert(BODY, row('a'));
      await manager.insert(BODY, row('a'));
    });
    await expect(failing).rejects.toThrow();
    expect(await work.read((manager) => manager.count(BODY))).toBe(0);
  });

  it('refuse to nest, which would wait for itself, however many went before', async () => {
    const nested = () => work.write(() => work.read((manager) => manager.count(BODY)));
    await expect(nested()).rejects.toThrow('inside another');
    expect(await work.read((manager) => manager.count(BODY))).toBe(0);
    await expect(nested()).rejects.toThrow('inside another');
  });
});
