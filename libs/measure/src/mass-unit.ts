/** The units a mass has at the edges, as UCUM writes them; `lb` is accepted as a spelling of `[lb_av]`. Inside, everything is grams. */
export const MASS_UNITS = ['g', 'kg', '[lb_av]'] as const;
export type MassUnit = (typeof MASS_UNITS)[number];

/** Grams in one of each unit (exact by definition; the international avoirdupois pound of 1959). */
export const GRAMS_PER_UNIT: Readonly<Record<MassUnit, number>> = { g: 1, kg: 1000, '[lb_av]': 453.59237 };
