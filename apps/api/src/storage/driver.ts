import { createRequire } from 'node:module';
import type { DataSourceOptions, EntityManager, FindOneOptions } from 'typeorm';
import type { DatabaseSettings } from '../settings/settings.ts';
import { BUSY_TIMEOUT_MS } from './embedded.ts';
import { ENTITIES } from './entities.ts';
import { MIGRATIONS } from './migrations/index.ts';

/**
 * TypeORM asks sqlite3 for its verbose mode, in which every statement notes a stack trace and the values it was given. Here it gets
 * the plain one.
 */
const SQLITE3 = { verbose: (): unknown => createRequire(import.meta.url)('sqlite3') };

/** How long a request may wait for PostgreSQL: for a connection, for a lock, for a statement, and for an answer at all. */
const POSTGRES_LIMITS = {
  connectionTimeoutMillis: 5_000,
  lock_timeout: 3_000,
  statement_timeout: 10_000,
  query_timeout: 15_000,
  idle_in_transaction_session_timeout: 30_000,
  keepAlive: true,
} as const;

/** The one place that knows the database drivers. Another embedded driver is a change here and in `embedded.ts` only. */
export function driverOptions(database: DatabaseSettings): DataSourceOptions {
  const common = {
    entities: ENTITIES,
    migrations: MIGRATIONS,
    synchronize: false,
    migrationsRun: false,
    logging: false,
  };
  return database.kind === 'sqlite'
    ? {
        ...common,
        type: 'sqlite',
        driver: SQLITE3,
        database: database.file,
        enableWAL: true,
        busyTimeout: BUSY_TIMEOUT_MS,
      }
    : {
        ...common,
        type: 'postgres',
        url: database.url,
        applicationName: 'easewright',
        extra: POSTGRES_LIMITS,
        poolErrorHandler: () => undefined, // a connection that breaks while nobody uses it is replaced
      };
}

/**
 * What a read within a transaction adds, so that nobody else changes the row until that ends; those who want to wait in line. An
 * embedded database has one transaction at a time.
 */
export const holding = ({ connection }: EntityManager): Pick<FindOneOptions, 'lock'> =>
  connection.options.type === 'postgres' ? { lock: { mode: 'for_no_key_update' } } : {};

/** For migrations, which may take as long as they need. */
export function migratingOptions(database: DatabaseSettings): DataSourceOptions {
  return {
    ...driverOptions(database),
    extra: { connectionTimeoutMillis: 5_000, keepAlive: true },
  } as DataSourceOptions;
}
