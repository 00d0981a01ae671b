import type { MeasuredSchema } from './measured-schema.ts';

/** The fields of a size that a maker chooses: a number with its unit, or a text. */
export const chosenFields = <const M extends MeasuredSchema>(as: M) =>
  ({
    value: { kind: 'measured', part: 'value', as, optional: true },
    unit: { kind: 'measured', part: 'unit', as, optional: true },
    text: { kind: 'measured', part: 'text', as, optional: true },
  }) as const;

/** The fields of a size that was measured: its standard uncertainty too. */
export const measuredFields = <const M extends MeasuredSchema>(as: M) =>
  ({ ...chosenFields(as), u: { kind: 'measured', part: 'u', as, optional: true } }) as const;
