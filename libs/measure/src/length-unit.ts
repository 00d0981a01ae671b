/** The units a length has at the edges, as UCUM writes them; `in` is accepted as a spelling of `[in_i]`. Inside, everything is millimetres. */
export const LENGTH_UNITS = ['mm', 'cm', '[in_i]'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** Millimetres in one of each unit (exact by definition). */
export const MM_PER_UNIT: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, '[in_i]': 25.4 };
