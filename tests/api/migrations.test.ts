import { DataSource, Table, type MigrationInterface, type QueryRunner } from 'typeorm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { THE_MAKER } from '../../apps/api/src/maker/maker-id.ts';
import { settingsFrom } from '../../apps/api/src/settings/settings.ts';
import { driverOptions } from '../../apps/api/src/storage/driver.ts';
import { migrate, tableNames, undoLastMigration } from '../../apps/api/src/storage/migrate.ts';
import { MIGRATIONS } from '../../apps/api/src/storage/migrations/index.ts';
import { DATABASES, emptyDatabase, type EmptyDatabase } from '../support/databases.ts';

type MigrationClass = new () => MigrationInterface;

const TIME = '2026-01-01T00:00:00.000Z';
/** A row for each table that a migration makes, by the migration's name. */
const ROWS: Readonly<Record<string, readonly string[]>> = {
  MakerAndRecords1764000000000: ['body', 'garment', 'fabric'].map(
    (table) =>
      `INSERT INTO ${table} (id, maker_id, version, created_at, updated_at, document)
       VALUES ('${table}-1', '${THE_MAKER}', 1, '${TIME}', '${TIME}', '{"title":"kept"}')`,
  ),
  TargetSheets1764000100000: [
    `INSERT INTO target_sheet (id, maker_id, created_at, rules_version, summary, request, sheet)
     VALUES ('sheet-1', '${THE_MAKER}', '${TIME}', '1', '{}', '{}', '{}')`,
  ],
  HandOff1764000200000: [
    `INSERT INTO planner (id, maker_id, version, created_at, updated_at, document, state, secrets)
     VALUES ('planner-1', '${THE_MAKER}', 1, '${TIME}', '${TIME}', '{}', 'active', '[]')`,
    `INSERT INTO hand_off (id, maker_id, planner_id, target_sheet_id, created_at, content_type, body, state, attempts, try_until, fingerprint)
     VALUES ('hand-off-1', '${THE_MAKER}', 'planner-1', 'sheet-1', '${TIME}', 'application/json', '{}', 'arrived', 1, '${TIME}', '')`,
    `INSERT INTO hand_off_attempt (id, maker_id, hand_off_id, at, milliseconds, answer)
     VALUES ('attempt-1', '${THE_MAKER}', 'hand-off-1', '${TIME}', 5, 'taken')`,
    `INSERT INTO read_key (id, maker_id, created_at, title, prefix, hash)
     VALUES ('key-1', '${THE_MAKER}', '${TIME}', 'Mine', 'easewright_', '')`,
  ],
  IdempotentWrites1764000300000: [
    `INSERT INTO idempotent_write (id, maker_id, idempotency_key, fingerprint, created_at, made_id, made)
     VALUES ('write-1', '${THE_MAKER}', 'key-1', '', '${TIME}', 'body-1', '')`,
  ],
  SheetsWithOpenings1764000400000: [],
  SeveralGarments1764000500000: [],
};

/** A kept sheet of before necks opened, in short. */
const EARLIER_SHEET = {
  design: { silhouette: 'pullover' },
  assembled: [{ name: 'chest-width', value: 513.5, follows: { width: 1, 'neck-edge': 0.5 } }],
  pieces: [
    { piece: 'back', dimensions: [{ name: 'width', value: 510.9, follows: { 'chest-width': 1 } }] },
    { piece: 'front', dimensions: [{ name: 'width', value: 510.9, follows: {} }] },
  ],
  checks: [
    { check: 'hip', verdict: 'fails', need: 990, have: 980 },
    { check: 'cuff-stays', verdict: 'fails', need: 210, have: 202 },
  ],
};

/** Rebuilds a table the way that loses rows: the copy leaves one out. */
class LosesARow9999999999999 implements MigrationInterface {
  readonly name = 'LosesARow9999999999999';
  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`DELETE FROM body WHERE id = 'body-1'`);
  }
  async down(): Promise<void> {}
}

class AddsATable9999999999998 implements MigrationInterface {
  readonly name = 'AddsATable9999999999998';
  async up(runner: QueryRunner): Promise<void> {
    await runner.createTable(new Table({ name: 'added', columns: [{ name: 'id', type: 'integer', isPrimary: true }] }));
  }
  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('added');
  }
}

/** Rebuilds the table that all others refer to: with foreign keys on, dropping the old one would take them along. */
class RebuildsMaker9999999999999 implements MigrationInterface {
  readonly name = 'RebuildsMaker9999999999999';
  async up(runner: QueryRunner): Promise<void> {
    const table = await runner.getTable('maker');
    if (table === undefined) throw new Error('no maker');
    const copy = new Table({ name: 'maker_copy', columns: table.columns.map((column) => column.clone()) });
    await runner.createTable(copy);
    await runner.query('INSERT INTO maker_copy SELECT * FROM maker');
    await runner.query('DROP TABLE maker');
    await runner.query('ALTER TABLE maker_copy RENAME TO maker');
  }
  async down(): Promise<void> {}
}

describe.each(DATABASES)('migrations on %s', (kind) => {
  let database: EmptyDatabase;
  const open: DataSource[] = [];
  const connect = async (migrations: readonly MigrationClass[]): Promise<DataSource> => {
    const options = { ...driverOptions(settingsFrom(database.env).database), migrations: [...migrations] };
    const dataSource = await new DataSource(options).initialize();
    open.push(dataSource);
    return dataSource;
  };
  const tablesOf = async (dataSource: DataSource) => (await tableNames(dataSource.manager)).sort();
  const insertRows = async (dataSource: DataSource, names: readonly string[]): Promise<void> => {
    for (const sql of names.flatMap((name) => ROWS[name] ?? [])) await dataSource.query(sql);
  };

  beforeEach(async () => void (database = await emptyDatabase(kind)));
  afterEach(async () => {
    for (const dataSource of open.splice(0)) await dataSource.destroy();
    await database.remove();
  });

  it('each come with a row to test them with', () => {
    expect(MIGRATIONS.map(({ name }) => name).filter((name) => !(name in ROWS))).toEqual([]);
  });

  it.each(MIGRATIONS.map((migration, index) => [migration.name, index] as const))(
    '%s runs over rows, is undone, and runs again',
    async (name, index) => {
      const before = await connect(MIGRATIONS.slice(0, index));
      await migrate(before);
      await insertRows(
        before,
        MIGRATIONS.slice(0, index).map((migration) => migration.name),
      );
      const tablesBefore = await tablesOf(before);

      const after = await connect(MIGRATIONS.slice(0, index + 1));
      await migrate(after);
      await insertRows(after, [name]);
      const tablesAfter = await tablesOf(after);
      await undoLastMigration(after);
      expect(await tablesOf(after)).toEqual(tablesBefore);
      await migrate(after);
      expect(await tablesOf(after)).toEqual(tablesAfter);
      for (const table of tablesBefore.filter((each) => each !== 'maker')) {
        expect(await after.query(`SELECT maker_id FROM ${table}`), table).toEqual([{ maker_id: THE_MAKER }]);
      }
    },
  );

  it('do nothing the second time', async () => {
    const dataSource = await connect(MIGRATIONS);
    await migrate(dataSource);
    await insertRows(dataSource, Object.keys(ROWS));
    await migrate(await connect(MIGRATIONS));
    expect(await dataSource.query('SELECT id FROM body')).toEqual([{ id: 'body-1' }]);
  });

  it('are rolled back when they lose a row', async () => {
    const dataSource = await connect([...MIGRATIONS, LosesARow9999999999999]);
    await migrate(await connect(MIGRATIONS));
    await insertRows(dataSource, Object.keys(ROWS));
    await expect(migrate(dataSource)).rejects.toThrow('would leave 0 of 1 rows in body');
    expect(await dataSource.query('SELECT id FROM body')).toEqual([{ id: 'body-1' }]);
  });

  it('are all taken back where one of them fails: an upgrade that fails leaves what was there', async () => {
    await migrate(await connect(MIGRATIONS));
    const dataSource = await connect([...MIGRATIONS, AddsATable9999999999998, LosesARow9999999999999]);
    await insertRows(dataSource, Object.keys(ROWS));
    const before = await tablesOf(dataSource);
    await expect(migrate(dataSource)).rejects.toThrow('would leave 0 of 1 rows in body');
    expect(await tablesOf(dataSource)).toEqual(before);
    await migrate(await connect(MIGRATIONS));
  });

  it('give kept sheets openings, comfort and the places of followers, and leave their numbers', async () => {
    const index = MIGRATIONS.findIndex(({ name }) => name === 'SheetsWithOpenings1764000400000');
    const before = await connect(MIGRATIONS.slice(0, index));
    await migrate(before);
    const ids = Array.from({ length: 201 }, (_, i) => `sheet-${String(i).padStart(3, '0')}`);
    const request = JSON.stringify({ title: '', rules: { 'head-margin': 0.04, 'cuff-room': 12 } });
    for (const id of ids)
      await before.query(
        `INSERT INTO target_sheet (id, maker_id, created_at, rules_version, summary, request, sheet)
         VALUES ($1, $2, $3, '1', '{}', $4, $5)`,
        [id, THE_MAKER, TIME, id === 'sheet-000' ? null : request, JSON.stringify(EARLIER_SHEET)],
      );

    const after = await connect(MIGRATIONS.slice(0, index + 1));
    await migrate(after);
    const rows = (await after.query('SELECT id, sheet, request FROM target_sheet ORDER BY id')) as {
      id: string;
      sheet: string;
      request: string | null;
    }[];
    expect(rows.map(({ id }) => id)).toEqual(ids);
    const none = { edges: [], regions: [], identities: [] };
    expect(rows[0]?.request).toBeNull();
    for (const row of rows.slice(1))
      expect(JSON.parse(row.request!)).toEqual({ title: '', rules: { 'cuff-room': 12 } });
    for (const { sheet } of rows)
      expect(JSON.parse(sheet)).toEqual({
        craft: 'knit',
        stitch: null,
        design: { silhouette: 'pullover', opening: { at: 'none', length: 0 } },
        assembled: [{ name: 'chest-width', value: 513.5, follows: [{ piece: 'back', name: 'width', slope: 1 }] }],
        pieces: [
          {
            piece: 'back',
            dimensions: [
              {
                name: 'width',
                value: 510.9,
                follows: [{ piece: 'assembled', name: 'chest-width', slope: 1 }],
                defining: true,
              },
            ],
            ...none,
          },
          { piece: 'front', dimensions: [{ name: 'width', value: 510.9, follows: [], defining: true }], ...none },
        ],
        checks: [
          { check: 'hip', comfort: false, verdict: 'fails', need: 990, have: 980 },
          { check: 'cuff-stays', comfort: true, verdict: 'poor', need: 210, have: 202 },
        ],
      });
  });

  it('let kept sheets have several garments, and take what they were made from into the shape of now', async () => {
    const index = MIGRATIONS.findIndex(({ name }) => name === 'SeveralGarments1764000500000');
    const before = await connect(MIGRATIONS.slice(0, index));
    await migrate(before);
    const change = { value: 2, unit: 'cm', text: null };
    const classic = { category: 'classic', place: 0.5 };
    const design = (basis: string, easeChange: object | null) => ({
      basis,
      length: 'regular',
      ease: classic,
      easeChange,
    });
    const garment = { title: 'Green', measures: [{ name: 'chest-width' }] };
    const requests = [
      { title: 'a', garment: null, design: design('body', null) },
      { title: 'b', garment, design: design('both', change) },
      { title: 'c', garment, design: design('garment', null) },
      { title: 'd', garment, design: design('body', change) },
      { title: 'e', garment: { ...garment, measures: [] }, design: design('both', change) },
      null,
    ];
    for (const [place, request] of requests.entries())
      await before.query(
        `INSERT INTO target_sheet (id, maker_id, created_at, rules_version, summary, garment_id, garment_version, request, sheet)
         VALUES ($1, $2, $3, '1', '{}', $4, $5, $6, '{}')`,
        [
          `sheet-${place}`,
          THE_MAKER,
          TIME,
          request?.garment ? 'green' : null,
          request?.garment ? 3 : null,
          request && JSON.stringify(request),
        ],
      );
    const rowsOf = async (source: DataSource) =>
      (await source.query('SELECT * FROM target_sheet ORDER BY id')) as Record<string, string | null>[];

    const after = await connect(MIGRATIONS.slice(0, index + 1));
    await migrate(after);
    const rows = await rowsOf(after);
    const green = [{ id: 'green', version: 3 }];
    expect(rows.map(({ garments }) => JSON.parse(garments!))).toEqual([[], green, green, green, green, []]);
    expect(rows[0]).not.toHaveProperty('garment_id');
    const of = (basis: string, ease: object) => ({ basis, length: 'regular', ease });
    const basis = { ...garment, basis: true };
    expect(rows.map(({ request }) => request && JSON.parse(request))).toEqual([
      { title: 'a', garments: [], design: of('body', classic) },
      { title: 'b', garments: [basis], design: of('both', { as: 'garment', change }) },
      { title: 'c', garments: [basis], design: of('garment', { as: 'garment', change: null }) },
      { title: 'd', garments: [basis], design: of('body', classic) },
      { title: 'e', garments: [{ ...basis, measures: [] }], design: of('both', classic) },
      null,
    ]);

    await after.query(`UPDATE target_sheet SET garments = $1, request = $2 WHERE id = 'sheet-1'`, [
      JSON.stringify([{ id: 'blue', version: 1 }, ...green]),
      JSON.stringify({ title: 'b', garments: [{ title: 'Blue', basis: false }, basis] }),
    ]);
    await undoLastMigration(after);
    const undone = await rowsOf(after);
    expect(undone.map(({ garment_id }) => garment_id)).toEqual([null, 'green', 'green', 'green', 'green', null]);
    expect(undone.map(({ garment_version }) => garment_version)).toEqual([null, 3, 3, 3, 3, null]);
    expect(JSON.parse(undone[1]!['request']!)).toEqual({ title: 'b', garment });
    expect(undone[5]!['request']).toBeNull();
  });

  it.runIf(kind === 'postgres')('run once, however many processes start together', async () => {
    const sources = await Promise.all(Array.from({ length: 8 }, () => connect(MIGRATIONS)));
    await Promise.all(sources.map(migrate));
    const [source] = sources;
    expect(await source?.query('SELECT count(*)::int AS runs FROM migrations')).toEqual([{ runs: MIGRATIONS.length }]);
  });

  it.runIf(kind === 'sqlite')('do not lose the children of a table that is rebuilt', async () => {
    const dataSource = await connect([...MIGRATIONS, RebuildsMaker9999999999999]);
    await migrate(await connect(MIGRATIONS));
    await insertRows(dataSource, Object.keys(ROWS));
    await migrate(dataSource);
    expect(await dataSource.query('SELECT id FROM body')).toEqual([{ id: 'body-1' }]);
    expect(await dataSource.query('PRAGMA foreign_keys')).toEqual([{ foreign_keys: 1 }]);
  });

  it('give every table but the maker’s a maker_id that refers to her', async () => {
    const dataSource = await connect(MIGRATIONS);
    await migrate(dataSource);
    const runner = dataSource.createQueryRunner();
    for (const name of (await tablesOf(dataSource)).filter((table) => table !== 'maker')) {
      const table = await runner.getTable(name);
      expect(
        table?.foreignKeys.map(({ columnNames }) => columnNames[0]),
        name,
      ).toContain('maker_id');
      expect(table?.findColumnByName('maker_id')?.isNullable, name).toBe(false);
    }
    await runner.release();
  });
});
