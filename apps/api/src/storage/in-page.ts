import { LessThan, MoreThanOrEqual, type FindOptionsWhere } from 'typeorm';

/** Which rows of a list make a page: the newest first, below an id, of this time or later, so many at most. */
export interface PageRows {
  readonly limit: number;
  readonly before: string | null;
  readonly since: string | null;
}

/** Where the rows of a page are; `time` is the column that `since` is about. */
export function inPage<R extends { id: string }>(
  { before, since }: PageRows,
  time: keyof R & string,
): FindOptionsWhere<R> {
  const where = {
    ...(before !== null && { id: LessThan(before) }),
    ...(since !== null && { [time]: MoreThanOrEqual(since) }),
  };
  return where as FindOptionsWhere<R>;
}
