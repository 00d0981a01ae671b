import { createHash } from 'node:crypto';
import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request, Response } from 'express';
import { toCsv, toSvg, toText, type TargetSheet } from '#target-sheet';
import { HttpProblem } from '../http/problem.ts';

/** The forms a sheet is given in, by media type; the first where the request does not mind. */
const FORMATS: Readonly<Record<SheetFormat, (sheet: TargetSheet) => string>> = {
  'application/json': (sheet) => JSON.stringify(sheet),
  'text/csv': toCsv,
  'image/svg+xml': toSvg,
  'text/plain': toText,
};

export const SHEET_FORMATS = ['application/json', 'text/csv', 'image/svg+xml', 'text/plain'] as const;
export type SheetFormat = (typeof SHEET_FORMATS)[number];

/** The form that the request accepts best, found before anything is computed or written. */
export const AcceptedFormat = createParamDecorator((_: unknown, context: ExecutionContext): SheetFormat => {
  const accepted = context
    .switchToHttp()
    .getRequest<Request>()
    .accepts([...SHEET_FORMATS]);
  if (accepted !== false) return accepted as SheetFormat;
  throw new HttpProblem(406, 'no-such-format', `A sheet is given as ${SHEET_FORMATS.join(', ')}.`);
});

/** Answers with a sheet. */
export function sendSheet(response: Response, format: SheetFormat, sheet: TargetSheet): void {
  response.vary('Accept').type(format).send(FORMATS[format](sheet));
}

/** Answers with a kept sheet, whose every form has an ETag of its own, since it never changes. */
export function sendKeptSheet(response: Response, format: SheetFormat, json: string): void {
  const text = format === 'application/json' ? json : FORMATS[format](JSON.parse(json) as TargetSheet);
  const etag = createHash('sha256').update(text).digest('base64url').slice(0, 22);
  response.set('ETag', `"${etag}"`).vary('Accept').type(format).send(text);
}
