/** What lengths in sentences are told in. */
export type Tape = 'cm' | 'in';
