import { text } from '#advice-text';
import { mapSheet, payloadText, type MappingWarning, type MissingName } from '#hand-off';
import type { TargetSheet } from '#target-sheet';
import { ApiError } from '../../http/api-error.ts';
import { etagOfText } from '../../http/etag-of-text.ts';
import { keptSheetText } from '../../target-sheets/sheet-format.ts';
import type { TargetSheetRow } from '../../target-sheets/target-sheet.entity.ts';
import type { PlannerDocument } from '../planners/planner-document.ts';

/** Exactly what a planner is given. */
export interface Package {
  readonly contentType: string;
  readonly body: string;
  /** What to know before sending: lengths left out, or rounded further than they may be. */
  readonly warnings: readonly WarningInWords[];
}

interface WarningInWords {
  readonly name: string;
  readonly message: string;
}

const READER = { tape: 'cm' } as const;

/** A larger push is refused by many (Standard Webhooks 1.0.0: keep it under 20 kB). */
const MOST_BYTES = 20_000;

/** The sheet lacks what the planner requires: each name, why, and the measures to take. */
export class PlannerLacks extends ApiError {
  constructor(
    title: string,
    readonly missing: readonly MissingName[],
  ) {
    super('planner-lacks', `${title} cannot work with this sheet: ${missing.map(inWords).join(' ')}`);
  }
}

export const inWords = ({ name, reason, needs }: MissingName): string =>
  `${name}: ${text('missing', reason, READER)}${needs.length > 0 ? ` Measure ${needs.join(' and ')}.` : ''}`;

const warningInWords = (warning: MappingWarning): WarningInWords => ({
  name: warning.name,
  message: text('plannerWarning', warning, READER),
});

/**
 * Packs a sheet for a planner. One that takes sheets as such and is pushed to gets a link, for a sheet is larger than a
 * push should be; `origin` is where it can pull from.
 *
 * @throws DomainError `planner-lacks` (see `PlannerLacks`), `payload-too-large`
 */
export function packSheet(
  { id, sheet: json }: Pick<TargetSheetRow, 'id' | 'sheet'>,
  { title, address, takes }: PlannerDocument,
  origin: string,
): Package {
  const mapped = mapSheet(JSON.parse(json) as TargetSheet, takes);
  if (!mapped.ok) throw new PlannerLacks(title, mapped.missing);
  const { payload, contentType } = mapped;
  const warnings = mapped.warnings.map(warningInWords);
  const body = payloadText(payload);
  if (address === null) return { contentType, body, warnings };
  if (takes.format === 'sheet') {
    const url = `${origin}/v1/target-sheets/${id}?unit=${takes.unit}`;
    const link = { id, url, etag: etagOfText(keptSheetText(json, 'application/json', takes.unit)) };
    return { contentType, body: JSON.stringify(link), warnings };
  }
  if (Buffer.byteLength(body) <= MOST_BYTES) return { contentType, body, warnings };
  throw new ApiError(
    'payload-too-large',
    `What ${title} takes is over 20 kB; name fewer dimensions, or let it take the sheet as such.`,
  );
}
