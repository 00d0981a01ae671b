import { Table, type MigrationInterface, type QueryRunner, type TableColumnOptions } from 'typeorm';

const id = (name: string): TableColumnOptions => ({ name, type: 'varchar', length: '36' });
const time = (name: string): TableColumnOptions => ({ name, type: 'varchar', length: '30' });
const optional = (column: TableColumnOptions): TableColumnOptions => ({ ...column, isNullable: true });
const key: TableColumnOptions = { ...id('id'), isPrimary: true };

/** A row goes when what it belongs to goes. */
const belongsTo = (table: string) => ({
  columnNames: [`${table}_id`],
  referencedTableName: table,
  referencedColumnNames: ['id'],
  onDelete: 'CASCADE',
});

/** Planners, what is handed on to them and what came of it, and the keys that let them read. */
export class HandOff1764000200000 implements MigrationInterface {
  readonly name = 'HandOff1764000200000';

  async up(runner: QueryRunner): Promise<void> {
    for (const table of [planner, handOff, attempt, readKey]) await runner.createTable(new Table(table));
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const { name } of [readKey, attempt, handOff, planner]) await runner.dropTable(name);
  }
}

const planner = {
  name: 'planner',
  columns: [
    key,
    id('maker_id'),
    { name: 'version', type: 'integer' },
    time('created_at'),
    time('updated_at'),
    { name: 'document', type: 'text' },
    { name: 'state', type: 'varchar', length: '10' },
    optional(time('resting_until')),
    { name: 'secrets', type: 'text' },
  ],
  foreignKeys: [belongsTo('maker')],
  indices: [{ name: 'planner_of_maker', columnNames: ['maker_id', 'id'] }],
};

const handOff = {
  name: 'hand_off',
  columns: [
    key,
    id('maker_id'),
    id('planner_id'),
    id('target_sheet_id'),
    time('created_at'),
    { name: 'content_type', type: 'varchar', length: '60' },
    { name: 'body', type: 'text' },
    { name: 'state', type: 'varchar', length: '10' },
    { name: 'attempts', type: 'integer' },
    optional(time('next_try_at')),
    time('try_until'),
    optional(time('claimed_until')),
    optional({ name: 'idempotency_key', type: 'varchar', length: '200' }),
    { name: 'fingerprint', type: 'varchar', length: '64' },
  ],
  foreignKeys: [belongsTo('maker'), belongsTo('planner'), belongsTo('target_sheet')],
  uniques: [{ name: 'hand_off_asked_once', columnNames: ['maker_id', 'idempotency_key'] }],
  indices: [
    { name: 'hand_off_of_maker', columnNames: ['maker_id', 'id'] },
    { name: 'hand_off_of_planner', columnNames: ['planner_id', 'state'] },
    { name: 'hand_off_of_target_sheet', columnNames: ['target_sheet_id'] },
    { name: 'hand_off_due', columnNames: ['state', 'next_try_at'] },
  ],
};

const attempt = {
  name: 'hand_off_attempt',
  columns: [
    key,
    id('maker_id'),
    id('hand_off_id'),
    time('at'),
    { name: 'milliseconds', type: 'integer' },
    optional({ name: 'status', type: 'integer' }),
    optional({ name: 'failure', type: 'varchar', length: '30' }),
    { name: 'answer', type: 'text' },
  ],
  foreignKeys: [belongsTo('maker'), belongsTo('hand_off')],
  indices: [{ name: 'attempt_of_hand_off', columnNames: ['hand_off_id', 'id'] }],
};

const readKey = {
  name: 'read_key',
  columns: [
    key,
    id('maker_id'),
    optional(id('target_sheet_id')),
    time('created_at'),
    { name: 'title', type: 'varchar', length: '120' },
    { name: 'prefix', type: 'varchar', length: '20' },
    { name: 'hash', type: 'varchar', length: '64' },
    optional(time('expires_at')),
    optional(time('revoked_at')),
    optional(time('last_used_at')),
  ],
  foreignKeys: [belongsTo('maker'), belongsTo('target_sheet')],
  indices: [
    { name: 'read_key_by_hash', columnNames: ['hash'], isUnique: true },
    { name: 'read_key_of_maker', columnNames: ['maker_id', 'id'] },
    { name: 'read_key_of_target_sheet', columnNames: ['target_sheet_id'] },
  ],
};
