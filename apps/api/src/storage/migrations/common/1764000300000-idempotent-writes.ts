import { Table, type MigrationInterface, type QueryRunner } from 'typeorm';

/** What was made for requests that can be sent again. */
export class IdempotentWrites1764000300000 implements MigrationInterface {
  readonly name = 'IdempotentWrites1764000300000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.createTable(new Table(idempotentWrite));
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('idempotent_write');
  }
}

const idempotentWrite = {
  name: 'idempotent_write',
  columns: [
    { name: 'id', type: 'varchar', length: '36', isPrimary: true },
    { name: 'maker_id', type: 'varchar', length: '36' },
    { name: 'idempotency_key', type: 'varchar', length: '200' },
    { name: 'fingerprint', type: 'varchar', length: '64' },
    { name: 'created_at', type: 'varchar', length: '30' },
    { name: 'made_id', type: 'varchar', length: '36' },
    { name: 'made', type: 'text' },
  ],
  foreignKeys: [
    { columnNames: ['maker_id'], referencedTableName: 'maker', referencedColumnNames: ['id'], onDelete: 'CASCADE' },
  ],
  uniques: [{ name: 'idempotent_write_once', columnNames: ['maker_id', 'idempotency_key'] }],
  indices: [
    { name: 'idempotent_write_by_age', columnNames: ['maker_id', 'created_at'] },
    { name: 'idempotent_write_of_made', columnNames: ['maker_id', 'made_id'] },
  ],
};
