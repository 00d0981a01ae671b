import { ApiHeader, ApiResponse, getSchemaPath } from '@nestjs/swagger';
import { applyDecorators } from '@nestjs/common';
import { ApiProblems } from '../http/api-problems.ts';
import { SHEET_FORMATS } from './sheet-format.ts';

/** Where `openApiDocument` puts the published schema of the sheet. */
export const SHEET_SCHEMA = 'TargetSheet';

/** Documents an answer that is a sheet, in any of its forms. */
export function ApiSheet(status: 200 | 201, description: string, headers: Readonly<Record<string, string>> = {}) {
  const forms = SHEET_FORMATS.map((format) => [
    format,
    { schema: format === 'application/json' ? { $ref: getSchemaPath(SHEET_SCHEMA) } : { type: 'string' as const } },
  ]);
  const described = Object.entries(headers).map(([name, words]) => [
    name,
    { description: words, schema: { type: 'string' as const } },
  ]);
  return applyDecorators(
    ApiHeader({
      name: 'Accept',
      required: false,
      description: 'The form wanted; without it JSON.',
      schema: { type: 'string', enum: [...SHEET_FORMATS] },
    }),
    ApiResponse({ status, description, content: Object.fromEntries(forms), headers: Object.fromEntries(described) }),
    ApiProblems(406),
  );
}
