import { HOW_DEFAULT, readMeasured } from '#measure';
import { FIGURE_DEFAULT, type BodyRecord } from './body-record.ts';
import type { Body, BodyMeasure } from './body.ts';
import { withPublishedSize } from './sizes/with-published-size.ts';

type MeasureRecord = BodyRecord['measures'][number];

/**
 * The body in mm and g, with the measures of its size's row that were not taken.
 * @throws DomainError where a measure cannot be read; `unknown-size-table`, `unknown-size`
 */
export function bodyFromRecord({ figure, age, measures, size }: BodyRecord): Body {
  const body = { figure: figure ?? FIGURE_DEFAULT, ageYears: age ?? null, measures: measures.map(measureFromRecord) };
  return size == null ? body : withPublishedSize(body, size);
}

function measureFromRecord(record: MeasureRecord): BodyMeasure {
  const { name, how } = record;
  const { size, u } = readMeasured(record, name === 'weight' ? 'mass' : 'length');
  return { name, value: size, how: how ?? HOW_DEFAULT, ...(u !== undefined && { u }) };
}
