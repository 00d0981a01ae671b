import type { MigrationInterface, QueryRunner } from 'typeorm';
import { fromEarlier, withoutGoneRules } from '#target-sheet';

interface Row {
  readonly id: string;
  readonly sheet: string;
  readonly request: string | null;
}

/** Rows that are read at a time. */
const AT_ONCE = 100;

/**
 * Kept sheets take the shape of sheets whose neck may open and whose pieces have edges; their numbers stay. What they were made from loses the rules that
 * the model no longer has, so that it can be sent again. Undone, they stay in the new shape.
 */
export class SheetsWithOpenings1764000400000 implements MigrationInterface {
  readonly name = 'SheetsWithOpenings1764000400000';

  async up(runner: QueryRunner): Promise<void> {
    let after = '';
    for (;;) {
      const page = `SELECT id, sheet, request FROM target_sheet WHERE id > $1 ORDER BY id LIMIT ${AT_ONCE}`;
      const rows = (await runner.query(page, [after])) as Row[];
      for (const row of rows) await change(runner, row);
      if (rows.length < AT_ONCE) return;
      after = rows.at(-1)!.id;
    }
  }

  async down(): Promise<void> {}
}

async function change(runner: QueryRunner, { id, ...before }: Row): Promise<void> {
  const made: unknown = before.request && JSON.parse(before.request);
  const sheet = JSON.stringify(fromEarlier(JSON.parse(before.sheet), craftOf(made)));
  const request = made ? JSON.stringify(withKnownRules(made)) : before.request;
  if (sheet === before.sheet && request === before.request) return;
  await runner.query('UPDATE target_sheet SET sheet = $1, request = $2 WHERE id = $3', [sheet, request, id]);
}

/** Of the fabric that it was made from; knitted where that was not kept. */
const craftOf = (request: unknown): 'knit' | 'crochet' =>
  (request as { fabric?: { craft?: unknown } | null } | null)?.fabric?.craft === 'crochet' ? 'crochet' : 'knit';

function withKnownRules(request: unknown): unknown {
  const { rules, ...rest } = request as { rules?: Readonly<Record<string, unknown>> | null };
  return rules == null ? request : { ...rest, rules: withoutGoneRules(rules) };
}
