import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from 'pg';
import { inject } from 'vitest';
import type { Environment } from '../../apps/api/src/settings/settings.ts';

/** An empty database of its own: the environment that names it, and its removal. */
export interface EmptyDatabase {
  readonly env: Environment;
  remove(): Promise<void>;
}

export type DatabaseKind = 'sqlite' | 'postgres';

/** The databases that the same tests run on; PostgreSQL is left out where its server could not be started. */
export const DATABASES: readonly DatabaseKind[] = inject('postgresServer') === '' ? ['sqlite'] : ['sqlite', 'postgres'];

export async function emptyDatabase(kind: DatabaseKind): Promise<EmptyDatabase> {
  return kind === 'sqlite' ? emptySqlite() : emptyPostgres();
}

function emptySqlite(): EmptyDatabase {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  return { env: { DATA_DIR: folder }, remove: async () => rmSync(folder, { recursive: true, force: true }) };
}

async function emptyPostgres(): Promise<EmptyDatabase> {
  const server = inject('postgresServer');
  const name = `test_${process.pid}_${Date.now()}_${Math.floor(Math.random() * 1e6)}`;
  await onServer(server, `CREATE DATABASE ${name}`);
  return {
    env: { DATABASE_URL: `${server}/${name}`, HANDOFF_KEY: randomBytes(32).toString('base64') },
    remove: () => onServer(server, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}

async function onServer(server: string, sql: string): Promise<void> {
  const client = new Client({ connectionString: `${server}/postgres` });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
