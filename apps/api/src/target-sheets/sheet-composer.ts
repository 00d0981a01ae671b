import { randomUUID } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import {
  publishedSizes,
  rowBodyMeasures,
  sizeRow,
  sizeTable,
  type BodyDimension,
  type BodyModel,
  type PublishedSizes,
  type SizeRow,
} from '#body';
import { atPointer, composeSheet, type SheetInput, type TargetSheet } from '#target-sheet';
import { ApiError } from '../http/api-error.ts';
import { clock } from '../clock/steady-clock.ts';
import { BODY_MODEL } from '../body-model/body-model.module.ts';
import { sheetInput } from './sheet-input.ts';
import type { SheetChoices, SheetRequest } from './sheet-request.ts';

/** A sheet of a run, with the size it is for. */
interface SizedSheet {
  readonly size: string;
  readonly sheet: TargetSheet;
}

/** Lets the libs compute; gives each sheet its id and its time. */
@Injectable()
export class SheetComposer {
  constructor(@Inject(BODY_MODEL) private readonly model: BodyModel) {}

  /** A sheet that is kept has a UUID v7; for one that is only looked at, any id will do. */
  compose(request: SheetRequest, id: string = randomUUID()): TargetSheet {
    return this.composeFrom(sheetInput(request), id);
  }

  /** One sheet for each size of a published table, or for those named. @throws DomainError pointing to table, size or basis */
  run(
    choices: SheetChoices & Pick<SheetRequest, 'fabric'>,
    table: string,
    sizes: readonly string[] | null,
  ): SizedSheet[] {
    const basis = choices.design.basis ?? 'body';
    if (basis !== 'body') {
      const text = `Read the basis "${basis}"; a run of sizes has no garment to go by, so its basis is "body".`;
      throw new ApiError('basis-without-garment', text, '/design/basis');
    }
    const input = sheetInput({ ...choices, body: null, garments: [] });
    return rowsOf(table, sizes).map((row) => ({
      size: row.size,
      sheet: this.composeFrom(
        { ...input, title: `${input.title} ${row.size}`.trim(), body: bodyOfRow(row) },
        randomUUID(),
      ),
    }));
  }

  private composeFrom(input: SheetInput, id: string): TargetSheet {
    return composeSheet(input, { id, createdAt: clock.now().toISOString() }, { model: this.model });
  }
}

function bodyOfRow(row: SizeRow): NonNullable<SheetInput['body']> {
  const { figure } = sizeTable(row.table);
  return { figure, ageYears: row.ageYears, measures: rowBodyMeasures(row), estimate: true };
}

/** What a size is told by; a table with neither lists something else by age. */
const SIZED_BY: readonly BodyDimension[] = ['chest-girth', 'hip-girth'];
const hasSizes = ({ measures }: PublishedSizes): boolean => measures.some(({ name }) => SIZED_BY.includes(name));

function rowsOf(id: string, sizes: readonly string[] | null): readonly SizeRow[] {
  const table = atPointer('/table', () => sizeTable(id));
  if (!hasSizes(table)) {
    const others = publishedSizes().filter(hasSizes);
    const text = `"${id}" has neither chest nor hip, so it gives no sizes to make; these do: ${others.map((each) => each.id).join(', ')}.`;
    throw new ApiError('table-without-sizes', text, '/table');
  }
  return sizes === null
    ? table.rows
    : sizes.map((size, index) => atPointer(`/sizes/${index}`, () => sizeRow(table, size)));
}
