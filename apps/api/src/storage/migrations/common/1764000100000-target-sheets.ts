import { Table, type MigrationInterface, type QueryRunner } from 'typeorm';

const INPUTS = ['body', 'garment', 'fabric'];

/**
 * Kept target sheets. The ids of what a sheet was made from are not foreign keys: a sheet outlives its inputs, of which it
 * holds a snapshot.
 */
export class TargetSheets1764000100000 implements MigrationInterface {
  readonly name = 'TargetSheets1764000100000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.createTable(
      new Table({
        name: 'target_sheet',
        columns: [
          { name: 'id', type: 'varchar', length: '36', isPrimary: true },
          { name: 'maker_id', type: 'varchar', length: '36' },
          { name: 'created_at', type: 'varchar', length: '30' },
          { name: 'rules_version', type: 'varchar', length: '40' },
          ...INPUTS.flatMap((input) => [
            { name: `${input}_id`, type: 'varchar', length: '36', isNullable: true },
            { name: `${input}_version`, type: 'integer', isNullable: true },
          ]),
          { name: 'summary', type: 'text' },
          { name: 'request', type: 'text', isNullable: true },
          { name: 'sheet', type: 'text' },
        ],
        foreignKeys: [
          {
            columnNames: ['maker_id'],
            referencedTableName: 'maker',
            referencedColumnNames: ['id'],
            onDelete: 'CASCADE',
          },
        ],
        indices: [{ name: 'target_sheet_of_maker', columnNames: ['maker_id', 'id'] }],
      }),
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('target_sheet');
  }
}
