import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request, Response } from 'express';
import { inUnit, toCsv, toSvg, toText, type SheetUnit, type TargetSheet } from '#target-sheet';
import { etagOfText } from '../http/etag-of-text.ts';
import { HttpProblem } from '../http/problem.ts';
import { utf8 } from '../http/utf8.ts';

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
  response
    .vary('Accept')
    .type(format)
    .send(utf8(FORMATS[format](sheet)));
}

/** Answers with a kept sheet, in another unit where one is asked for. Every form has an ETag of its own: the sheet never changes. */
export function sendKeptSheet(response: Response, format: SheetFormat, json: string, unit?: SheetUnit): void {
  const text = keptSheetText(json, format, unit);
  response.set('ETag', etagOfText(text)).vary('Accept').type(format).send(utf8(text));
}

/** A kept sheet in one of its forms, in its own unit or another. */
export function keptSheetText(json: string, format: SheetFormat, unit?: SheetUnit): string {
  const sheet = JSON.parse(json) as TargetSheet;
  const asKept = unit === undefined || unit === sheet.unit;
  if (asKept && format === 'application/json') return json;
  return FORMATS[format](asKept ? sheet : inUnit(sheet, unit));
}
