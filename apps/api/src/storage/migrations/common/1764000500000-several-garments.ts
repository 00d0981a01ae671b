import type { MigrationInterface, QueryRunner } from 'typeorm';
import { requestFromEarlier } from '../../../target-sheets/request-from-earlier.ts';

interface Row {
  readonly id: string;
  readonly garment_id: string | null;
  readonly garment_version: number | null;
  readonly request: string | null;
}

interface RowOfSeveral {
  readonly id: string;
  readonly garments: string;
  readonly request: string | null;
}

/** Rows that are read at a time. */
const AT_ONCE = 100;

/**
 * A kept sheet is made from any number of garments: their ids and versions as JSON, in the order of its request. The requests take the shape of now; the kept numbers stay.
 * Undone, a sheet keeps its basis or its first garment, and its design the shape of now.
 */
export class SeveralGarments1764000500000 implements MigrationInterface {
  readonly name = 'SeveralGarments1764000500000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`ALTER TABLE target_sheet ADD COLUMN garments text NOT NULL DEFAULT '[]'`);
    await eachRow<Row>(runner, 'id, garment_id, garment_version, request', async (row) => {
      const { id, garment_id, garment_version, request } = row;
      const garments = garment_id === null ? [] : [{ id: garment_id, version: garment_version }];
      const changed = request && JSON.stringify(requestFromEarlier(JSON.parse(request)));
      const values = [JSON.stringify(garments), changed, id];
      await runner.query('UPDATE target_sheet SET garments = $1, request = $2 WHERE id = $3', values);
    });
    for (const column of ['garment_id', 'garment_version'])
      await runner.query(`ALTER TABLE target_sheet DROP COLUMN ${column}`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('ALTER TABLE target_sheet ADD COLUMN garment_id varchar(36)');
    await runner.query('ALTER TABLE target_sheet ADD COLUMN garment_version integer');
    await eachRow<RowOfSeveral>(runner, 'id, garments, request', async (row) => {
      const { request, place } = withOneGarment(row.request);
      const { id = null, version = null } =
        (JSON.parse(row.garments) as Partial<Row & { version: number }>[])[place] ?? {};
      await runner.query('UPDATE target_sheet SET garment_id = $1, garment_version = $2, request = $3 WHERE id = $4', [
        id,
        version,
        request,
        row.id,
      ]);
    });
    await runner.query('ALTER TABLE target_sheet DROP COLUMN garments');
  }
}

async function eachRow<R extends { readonly id: string }>(
  runner: QueryRunner,
  columns: string,
  work: (row: R) => Promise<void>,
): Promise<void> {
  let after = '';
  for (;;) {
    const page = `SELECT ${columns} FROM target_sheet WHERE id > $1 ORDER BY id LIMIT ${AT_ONCE}`;
    const rows = (await runner.query(page, [after])) as R[];
    for (const row of rows) await work(row);
    if (rows.length < AT_ONCE) return;
    after = rows.at(-1)!.id;
  }
}

/** A request with the garment alone that is the basis, else its first, and that one's place. */
function withOneGarment(request: string | null): { readonly request: string | null; readonly place: number } {
  const { garments, ...rest } = JSON.parse(request ?? '{}') as { garments?: { basis?: boolean }[] };
  if (garments === undefined) return { request, place: 0 };
  const place = Math.max(
    garments.findIndex(({ basis }) => basis === true),
    0,
  );
  const { basis: _, ...garment } = garments[place] ?? {};
  return { request: JSON.stringify({ ...rest, garment: place in garments ? garment : null }), place };
}
