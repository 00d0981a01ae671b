export { DomainError } from './domain-error.ts';
export { LENGTH_UNITS, MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
export type { Note } from './note.ts';
export { HOWS, type How } from './how.ts';
