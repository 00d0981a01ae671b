import type { CheckName } from '#fit';

/** Checks whose need, have, margin and u are ratios, not lengths. */
export const RATIO_CHECKS: readonly CheckName[] = ['sleeve-taper', 'raglan-slope', 'negative-ease'];
