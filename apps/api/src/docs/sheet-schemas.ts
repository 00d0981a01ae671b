import { targetSheetSchema, type JsonSchema } from '#target-sheet';
import { SHEET_SCHEMA } from '../target-sheets/api-sheet.ts';

/** The published schema of the sheet as schemas of the document: what it defines gets a name of its own, and references follow. */
export function sheetSchemas(): Readonly<Record<string, object>> {
  const { $schema: _schema, $id: _id, $defs = {}, ...sheet } = targetSheetSchema;
  return Object.fromEntries([
    [SHEET_SCHEMA, referring(sheet)],
    ...Object.entries($defs).map(([name, schema]) => [schemaName(name), referring(schema)] as const),
  ]);
}

/** `pieceDimension` → `TargetSheetPieceDimension`. */
function schemaName(definition: string): string {
  return `${SHEET_SCHEMA}${definition.charAt(0).toUpperCase()}${definition.slice(1)}`;
}

function referring(schema: JsonSchema): object {
  return JSON.parse(
    JSON.stringify(schema, (key, value: unknown) =>
      key === '$ref' && typeof value === 'string'
        ? `#/components/schemas/${schemaName(value.replace('#/$defs/', ''))}`
        : value,
    ),
  ) as object;
}
