// Kept writes on SQLite through the repository, against bare sqlite3 BEGIN + INSERT + COMMIT of the same bytes with the same pragmas, by turns.
// Wanted: a ratio of at least 0.4.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import sqlite3 from 'sqlite3';
import { v7 as uuid } from 'uuid';
import { Bodies } from '../dist/apps/api/src/bodies/bodies.js';
import { IdempotentRequest } from '../dist/apps/api/src/idempotency/idempotent-request.js';
import { THE_MAKER } from '../dist/apps/api/src/maker/maker-id.js';
import { openDatabase } from '../dist/apps/api/src/storage/open-database.js';
import { UnitOfWork } from '../dist/apps/api/src/storage/unit-of-work.js';
import { alternate } from './support/alternate.mjs';

const ROUNDS = 9;
const WRITES = 400;
const PRAGMAS = ['journal_mode', 'synchronous', 'foreign_keys', 'secure_delete', 'busy_timeout'];

const document = {
  title: 'Me, in spring',
  figure: 'woman',
  age: 41,
  estimate: true,
  measures: ['stature', 'chest-girth', 'hip-girth', 'waist-girth', 'across-back', 'nape-to-cuff'].map((name) => ({
    name,
    value: 94.5,
    unit: 'cm',
    text: null,
    u: null,
    how: 'home',
    takenAt: null,
  })),
};

/** A request that is not to be known again. */
const WITHOUT_KEY = new IdempotentRequest(null, '', null);

async function perSecond(write) {
  const start = process.hrtime.bigint();
  for (let count = 0; count < WRITES; count++) await write();
  return WRITES / (Number(process.hrtime.bigint() - start) / 1e9);
}

/** The same table in a file beside ours, the same pragmas, nothing between the driver and us. */
async function bareWriter(dataSource, file) {
  const [{ sql }] = await dataSource.query(`SELECT sql FROM sqlite_master WHERE name = 'body'`);
  const index = await dataSource.query(
    `SELECT sql FROM sqlite_master WHERE type = 'index' AND tbl_name = 'body' AND sql IS NOT NULL`,
  );
  const [maker] = await dataSource.query(`SELECT sql FROM sqlite_master WHERE name = 'maker'`);
  const database = new sqlite3.Database(file);
  const run = promisify(database.run.bind(database));
  for (const name of PRAGMAS) {
    const [row] = await dataSource.query(`PRAGMA ${name}`);
    await run(`PRAGMA ${name} = ${Object.values(row)[0]}`);
  }
  for (const statement of [maker.sql, sql, ...index.map((each) => each.sql)]) await run(statement);
  await run('INSERT INTO maker (id, created_at) VALUES (?, ?)', [THE_MAKER, new Date().toISOString()]);
  const insert = 'INSERT INTO body (id, maker_id, version, created_at, updated_at, document) VALUES (?, ?, ?, ?, ?, ?)';
  return async () => {
    const now = new Date().toISOString();
    await run('BEGIN TRANSACTION');
    await run(insert, [uuid(), THE_MAKER, 1, now, now, JSON.stringify(document)]);
    await run('COMMIT');
  };
}

const folder = mkdtempSync(join(tmpdir(), 'easewright-bench-'));
try {
  const dataSource = await openDatabase({ kind: 'sqlite', file: join(folder, 'ours.sqlite') });
  const bodies = new Bodies(new UnitOfWork(dataSource));
  const bare = await bareWriter(dataSource, join(folder, 'bare.sqlite'));
  const ours = () => bodies.create(THE_MAKER, document, WITHOUT_KEY);
  await perSecond(ours); // warm
  await perSecond(bare);
  const result = await alternate(
    ROUNDS,
    () => perSecond(ours),
    () => perSecond(bare),
  );
  console.log(`kept writes on SQLite: ${result.ours.toFixed(0)}/s, bare driver ${result.bare.toFixed(0)}/s`);
  console.log(`  ratio ${result.ratio.toFixed(2)} (wanted: 0.4), median of ${ROUNDS} turns`);
  await dataSource.destroy();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
