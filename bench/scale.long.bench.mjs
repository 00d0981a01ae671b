// Reading, listing and making beside 1,000 rows and beside many, by turns, on SQLite, and on PostgreSQL where DATABASE_URL names a
// server; two databases are made there, and dropped. Wanted: at 10^6 bodies and 10^5 sheets within 1.5 times of 10^3.
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { makeApp } from '../dist/apps/api/src/app.js';
import { THE_MAKER } from '../dist/apps/api/src/maker/maker-id.js';
import { UnitOfWork } from '../dist/apps/api/src/storage/unit-of-work.js';
import { alternate } from './support/alternate.mjs';

const FEW = 1_000;
const BODIES = Number(process.env.BODIES ?? 1_000_000);
const SHEETS = Number(process.env.SHEETS ?? 100_000);
const ROUNDS = 300;
const WARM_ROUNDS = 100;
/** Rows that are made by one statement. */
const CHUNK = 20_000;

const BODY = {
  figure: 'woman',
  measures: [
    { name: 'chest-girth', value: 94, unit: 'cm' },
    { name: 'hip-girth', value: 100, unit: 'cm' },
  ],
};
const FABRIC = { craft: 'crochet', thickness: { value: 6, unit: 'mm' } };
const DESIGN = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  length: 'regular',
  neckline: 'crew',
  ease: { category: 'classic', place: 0.5 },
};

function operationsOn({ url, ids }) {
  const ask = async (path, body) => {
    const response = await fetch(url + path, body && post(body));
    const text = await response.text();
    if (!response.ok) throw new Error(text);
  };
  return {
    'read a body': () => ask(`/v1/bodies/${ids.bodyId}`),
    'list bodies': () => ask('/v1/bodies?limit=20'),
    'make a sheet': () => ask('/v1/target-sheets', { ...ids, design: DESIGN }),
    'list sheets': () => ask('/v1/target-sheets?limit=20'),
  };
}

const post = (body) => ({
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body),
});

const timed = (run) => async () => {
  const begun = performance.now();
  await run();
  return performance.now() - begun;
};

/** Copies of a row with ids of their own, older than all others, until there are so many. A copied sheet is without its text. */
async function fill(work, isSqlite, table, columns, wanted) {
  const [{ rows }] = await work.read((manager) => manager.query(`SELECT count(*) AS rows FROM ${table}`));
  const numbers = (from, to) =>
    isSqlite
      ? `(WITH RECURSIVE numbers(n) AS (SELECT ${from} UNION ALL SELECT n + 1 FROM numbers WHERE n < ${to}) SELECT n FROM numbers)`
      : `(SELECT generate_series(${from}, ${to}) AS n)`;
  const hex = isSqlite ? `printf('%012x', n)` : `lpad(to_hex(n), 12, '0')`;
  const names = Object.keys(columns).join(', ');
  const values = Object.values(columns).join(', ');
  for (let from = Number(rows); from < wanted; from += CHUNK) {
    const source = numbers(from, Math.min(from + CHUNK, wanted) - 1);
    const copy = `INSERT INTO ${table} (id, ${names}) SELECT '01800000-0000-7000-8000-' || ${hex}, ${values} FROM ${source} AS numbers`;
    await work.erase((manager) => manager.query(copy)); // which empties the log, too
  }
  if (!isSqlite) await work.read((manager) => manager.query(`ANALYZE ${table}`));
}

/** The API on a database of its own, with so many rows. */
async function serve(isSqlite, env, bodies, sheets) {
  const app = await makeApp({ PAGE_DIR: 'none', BACKUPS_KEPT: '0', ...env });
  await app.listen(0, '127.0.0.1');
  const url = `http://127.0.0.1:${app.getHttpServer().address().port}`;
  const keep = async (path, body) => (await (await fetch(url + path, post(body))).json()).id;
  const ids = { bodyId: await keep('/v1/bodies', BODY), fabricId: await keep('/v1/fabrics', FABRIC) };
  const time = `'2026-01-01T00:00:00.000Z'`;
  const maker = `'${THE_MAKER}'`;
  const body = {
    maker_id: maker,
    version: 1,
    created_at: time,
    updated_at: time,
    document: `'${JSON.stringify(BODY)}'`,
  };
  const summary = `'{"title":"x","unit":"mm","silhouette":"pullover","construction":"raglan","length":"regular","neckline":"crew"}'`;
  const sheet = { maker_id: maker, created_at: time, rules_version: `'1'`, summary, sheet: `'{}'` };
  const work = app.get(UnitOfWork);
  await fill(work, isSqlite, 'body', body, bodies);
  await fill(work, isSqlite, 'target_sheet', sheet, sheets);
  return { app, url, ids };
}

async function bench(kind, envOf) {
  const many = await serve(kind === 'SQLite', envOf('many'), BODIES, SHEETS);
  const few = await serve(kind === 'SQLite', envOf('few'), FEW, FEW);
  console.log(`${kind}: beside ${FEW}, and beside ${BODIES} bodies and ${SHEETS} sheets`);
  const [ofFew, ofMany] = [operationsOn(few), operationsOn(many)];
  for (const name of Object.keys(ofFew)) {
    const turns = (rounds) => alternate(rounds, timed(ofMany[name]), timed(ofFew[name]));
    await turns(WARM_ROUNDS);
    const { ours, bare, ratio } = await turns(ROUNDS);
    console.log(
      `  ${name}: ${bare.toFixed(2)} ms, ${ours.toFixed(2)} ms, ratio ${ratio.toFixed(2)} (wanted: 1.5 at most)`,
    );
  }
  await few.app.close();
  await many.app.close();
}

/** Hands the work the address of two empty databases on that server, which are dropped when it is done. */
async function withDatabases(address, work) {
  const client = new pg.Client(address);
  await client.connect();
  const names = { few: `scale_few_${process.pid}`, many: `scale_many_${process.pid}` };
  try {
    for (const name of Object.values(names)) await client.query(`CREATE DATABASE ${name}`);
    await work((which) => Object.assign(new URL(address), { pathname: `/${names[which]}` }).href);
  } finally {
    for (const name of Object.values(names)) await client.query(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
    await client.end();
  }
}

const folder = mkdtempSync(join(tmpdir(), 'easewright-scale-'));
try {
  await bench('SQLite', (which) => ({ DATA_DIR: join(folder, which) }));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
const { DATABASE_URL } = process.env;
if (DATABASE_URL) {
  const HANDOFF_KEY = randomBytes(32).toString('base64');
  await withDatabases(DATABASE_URL, (addressOf) =>
    bench('PostgreSQL', (which) => ({ DATABASE_URL: addressOf(which), HANDOFF_KEY })),
  );
}
