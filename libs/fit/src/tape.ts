/** What lengths in the texts of a sheet are told in. */
export type Tape = 'cm' | 'in';
