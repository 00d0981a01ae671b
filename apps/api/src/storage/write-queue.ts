/**
 * Lets one unit of work run at a time, in the order of arrival.
 *
 * TypeORM's SQLite driver has one connection for the whole process. Two transactions started beside each other become one
 * there: when the first fails, its rollback takes the second's rows along, after the second has reported success.
 */
export class WriteQueue {
  private last: Promise<unknown> = Promise.resolve();

  run<T>(work: () => Promise<T>): Promise<T> {
    const mine = this.last.then(work);
    this.last = mine.catch(() => undefined);
    return mine;
  }
}
