import type { EntityManager } from 'typeorm';

/**
 * A transaction on SQLite, begun as one that writes. TypeORM's own counts how deep it is nested, and miscounts where SQLite
 * has rolled a transaction back by itself (a full disk): every later one would be a savepoint within none.
 */
export async function embeddedTransaction<T>(
  manager: EntityManager,
  work: (manager: EntityManager) => Promise<T>,
): Promise<T> {
  await manager.query('BEGIN IMMEDIATE');
  try {
    const done = await work(manager);
    await manager.query('COMMIT');
    return done;
  } catch (error) {
    await manager.query('ROLLBACK').catch(() => undefined); // SQLite may have done so by itself
    throw error;
  }
}
