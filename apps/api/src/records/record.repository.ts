import { type EntityManager, type EntitySchema } from 'typeorm';
import { storedRecord, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import type { RecordRow } from './record.entity.ts';
import { holding } from '../storage/driver.ts';
import { inPage, type PageRows } from '../storage/in-page.ts';

/** Reads what was kept before a field was added to its kind as if the field had been left out. */
export const readingAs =
  <S extends RecordSchema>(schema: S) =>
  (document: unknown): StoredRecord<S> =>
    storedRecord(schema, document as RecordOf<S>);

/** The rows of one kind of record. Every method is bound to a maker, and to the unit of work whose manager it is given. */
export class RecordRepository<D> {
  constructor(
    private readonly entity: EntitySchema<RecordRow>,
    private readonly reading: (document: unknown) => D,
  ) {}

  async insert(manager: EntityManager, row: RecordRow<D>): Promise<void> {
    await manager.insert(this.entity, row as RecordRow<object>);
  }

  async find(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D> | null> {
    const row = await manager.findOneBy(this.entity, { makerId, id });
    return row && this.read(row);
  }

  /** The row as it stays until the transaction ends, whoever else wants to change it. */
  async hold(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D> | null> {
    const row = await manager.findOne(this.entity, { where: { makerId, id }, ...holding(manager) });
    return row && this.read(row);
  }

  /** The newest first, one more than asked for. */
  async page(manager: EntityManager, makerId: string, rows: PageRows): Promise<RecordRow<D>[]> {
    const found = await manager.find(this.entity, {
      where: { makerId, ...inPage<RecordRow>(rows, 'updatedAt') },
      order: { id: 'DESC' },
      take: rows.limit + 1,
    });
    return found.map((row) => this.read(row));
  }

  async all(manager: EntityManager, makerId: string): Promise<RecordRow<D>[]> {
    const found = await manager.find(this.entity, { where: { makerId }, order: { id: 'ASC' } });
    return found.map((row) => this.read(row));
  }

  /** Writes the next version over the one that is held. */
  async replace(manager: EntityManager, next: RecordRow<D>): Promise<void> {
    const { id, makerId, version, updatedAt, document } = next as RecordRow<object>;
    await manager.update(this.entity, { id, makerId }, { version, updatedAt, document });
  }

  async delete(manager: EntityManager, makerId: string, id: string): Promise<void> {
    await manager.delete(this.entity, { makerId, id });
  }

  private read(row: RecordRow): RecordRow<D> {
    return { ...row, document: this.reading(row.document) };
  }
}
