/** The notes that say what to do to the pieces: they stand beside them. */
export const TO_MAKE: readonly string[] = ['neck-opens', 'opening-ends', 'opening-at-back', 'band-ends'];
