import { Table, type MigrationInterface, type QueryRunner } from 'typeorm';

const RECORDS = ['body', 'garment', 'fabric'];

/** The maker, and what she keeps: bodies, garments that fit, fabrics. A row belongs to its maker and goes with her. */
export class MakerAndRecords1764000000000 implements MigrationInterface {
  readonly name = 'MakerAndRecords1764000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.createTable(
      new Table({
        name: 'maker',
        columns: [
          { name: 'id', type: 'varchar', length: '36', isPrimary: true },
          { name: 'created_at', type: 'varchar', length: '30' },
        ],
      }),
    );
    for (const name of RECORDS) await runner.createTable(recordTable(name));
    await runner.query(
      `INSERT INTO maker (id, created_at) VALUES ('01900000-0000-7000-8000-000000000001', '2026-01-01T00:00:00.000Z')`,
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const name of [...RECORDS].reverse()) await runner.dropTable(name);
    await runner.dropTable('maker');
  }
}

function recordTable(name: string): Table {
  return new Table({
    name,
    columns: [
      { name: 'id', type: 'varchar', length: '36', isPrimary: true },
      { name: 'maker_id', type: 'varchar', length: '36' },
      { name: 'version', type: 'integer' },
      { name: 'created_at', type: 'varchar', length: '30' },
      { name: 'updated_at', type: 'varchar', length: '30' },
      { name: 'document', type: 'text' },
    ],
    foreignKeys: [
      { columnNames: ['maker_id'], referencedTableName: 'maker', referencedColumnNames: ['id'], onDelete: 'CASCADE' },
    ],
    indices: [{ name: `${name}_of_maker`, columnNames: ['maker_id', 'id'] }],
  });
}
