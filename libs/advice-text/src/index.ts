export type { Catalogue, Reader } from './catalogue.ts';
export type { Tape } from './tape.ts';
