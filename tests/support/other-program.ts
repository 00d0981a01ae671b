import sqlite3 from 'sqlite3';

/** Another program that has an SQLite database open. */
export interface OtherProgram {
  run(sql: string): Promise<void>;
  close(): Promise<void>;
}

export async function otherProgram(file: string): Promise<OtherProgram> {
  const database = await new Promise<sqlite3.Database>((resolve, reject) => {
    const opened: sqlite3.Database = new sqlite3.Database(file, (error) => (error ? reject(error) : resolve(opened)));
  });
  return {
    run: (sql) => new Promise((done, fail) => database.all(sql, (error) => (error ? fail(error) : done()))),
    close: () => new Promise((done, fail) => database.close((error) => (error ? fail(error) : done()))),
  };
}
