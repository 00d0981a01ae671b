import { type EntityManager, type EntitySchema } from 'typeorm';
import type { RecordRow } from './record.entity.ts';
import { inPage, type PageRows } from '../storage/in-page.ts';

/** The rows of one kind of record. Every method is bound to a maker, and to the unit of work whose manager it is given. */
export class RecordRepository<D> {
  constructor(private readonly entity: EntitySchema<RecordRow>) {}

  async insert(manager: EntityManager, row: RecordRow<D>): Promise<void> {
    await manager.insert(this.entity, row as RecordRow<object>);
  }

  find(manager: EntityManager, makerId: string, id: string): Promise<RecordRow<D> | null> {
    return manager.findOneBy(this.entity, { makerId, id }) as Promise<RecordRow<D> | null>;
  }

  /** The newest first, one more than asked for. */
  page(manager: EntityManager, makerId: string, rows: PageRows): Promise<RecordRow<D>[]> {
    return manager.find(this.entity, {
      where: { makerId, ...inPage<RecordRow>(rows, 'updatedAt') },
      order: { id: 'DESC' },
      take: rows.limit + 1,
    }) as Promise<RecordRow<D>[]>;
  }

  all(manager: EntityManager, makerId: string): Promise<RecordRow<D>[]> {
    return manager.find(this.entity, { where: { makerId }, order: { id: 'ASC' } }) as Promise<RecordRow<D>[]>;
  }

  /** Writes the next version over the one given. False when another was faster. */
  async replace(manager: EntityManager, next: RecordRow<D>): Promise<boolean> {
    const { id, makerId, version, updatedAt, document } = next as RecordRow<object>;
    const { affected } = await manager.update(
      this.entity,
      { id, makerId, version: version - 1 },
      { version, updatedAt, document },
    );
    return affected === 1;
  }

  async delete(manager: EntityManager, makerId: string, id: string): Promise<void> {
    await manager.delete(this.entity, { makerId, id });
  }
}
