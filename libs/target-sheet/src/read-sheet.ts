import { fromEarlier } from './from-earlier.ts';
import { targetSheetSchema } from './schema/target-sheet-schema.ts';
import { validateAgainst } from './schema/validate.ts';
import { sheetError } from './sheet-error.ts';
import { FORMAT, VERSION, type TargetSheet } from './target-sheet.ts';

/** The major version this code reads: the first number of its own. */
const MAJOR = Number(VERSION.split('.')[0]);
/** How many flaws a refusal names. */
const NAMED = 3;

/**
 * A sheet from parsed JSON, as it is, or in the shape of now where its shape is an earlier one: fields a newer minor version added are kept. Its structure is checked against the
 * schema, not its sums.
 *
 * @throws DomainError `sheet-format-unknown`, `sheet-version-too-new`, or `sheet-invalid` with the first flaw's pointer.
 */
export function readSheet(given: unknown): TargetSheet {
  const json = fromEarlier(given);
  const { format, version } = headOf(json);
  if (format !== FORMAT) throw sheetError('sheet-format-unknown', { format: FORMAT }, isRecord(json) ? '/format' : '');
  const major = typeof version === 'string' ? Number(/^(\d+)\.\d+$/.exec(version)?.[1]) : NaN;
  if (major > MAJOR) throw sheetError('sheet-version-too-new', { version: String(version), major: MAJOR }, '/version');
  const flaws = validateAgainst(targetSheetSchema, json);
  const [first] = flaws;
  if (!first) return json as TargetSheet;
  const more = Math.max(flaws.length - NAMED, 0);
  throw sheetError('sheet-invalid', { flaws: flaws.slice(0, NAMED), more }, first.pointer);
}

const isRecord = (json: unknown): json is Readonly<Record<string, unknown>> =>
  typeof json === 'object' && json !== null && !Array.isArray(json);
const headOf = (json: unknown): { format?: unknown; version?: unknown } =>
  isRecord(json) ? { format: json['format'], version: json['version'] } : {};
