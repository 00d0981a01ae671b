import { HOW_DEFAULT, readMeasured } from '#measure';
import { FIGURE_DEFAULT, type BodyRecord } from './body-record.ts';
import type { Body, BodyMeasure } from './body.ts';

type MeasureRecord = BodyRecord['measures'][number];

/** The body in mm and g. @throws DomainError where a size cannot be read */
export const bodyFromRecord = ({ figure, age, measures }: BodyRecord): Body => ({
  figure: figure ?? FIGURE_DEFAULT,
  ageYears: age ?? null,
  measures: measures.map(measureFromRecord),
});

function measureFromRecord(record: MeasureRecord): BodyMeasure {
  const { name, how } = record;
  const { size, u } = readMeasured(record, name === 'weight' ? 'mass' : 'length');
  return { name, value: size, how: how ?? HOW_DEFAULT, ...(u !== undefined && { u }) };
}
