import { createRequire } from 'node:module';
import type { Database } from 'sqlite3';

type Sqlite3 = typeof import('sqlite3');

/** A plain connection to an SQLite file, beside the one that TypeORM has. */
export class SqliteConnection {
  private constructor(private readonly database: Database) {}

  static async open(file: string): Promise<SqliteConnection> {
    const { Database } = createRequire(import.meta.url)('sqlite3') as Sqlite3;
    const database = await new Promise<Database>((resolve, reject) => {
      const opened: Database = new Database(file, (error) => (error ? reject(error) : resolve(opened)));
    });
    return new SqliteConnection(database);
  }

  /** Opens a file for one piece of work. */
  static async with<T>(file: string, work: (connection: SqliteConnection) => Promise<T>): Promise<T> {
    const connection = await SqliteConnection.open(file);
    try {
      return await work(connection);
    } finally {
      await connection.close();
    }
  }

  query<Row>(sql: string, parameters: readonly unknown[] = []): Promise<Row[]> {
    return new Promise((resolve, reject) =>
      this.database.all<Row>(sql, [...parameters], (error, rows) => (error ? reject(error) : resolve(rows))),
    );
  }

  close(): Promise<void> {
    return new Promise((resolve, reject) => this.database.close((error) => (error ? reject(error) : resolve())));
  }
}
