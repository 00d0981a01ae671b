import type { MadePiece } from '#fit';
import type { Notebook } from '../notebook/notebook.ts';
import { valueIn } from '../reading/read.ts';

export const madeKey = (piece: string, name: string): string => `${piece}/${name}`;

/** The finished pieces with a readable measurement, mm. */
export function toMade(made: Notebook['made']): readonly MadePiece[] {
  return Object.entries(made).flatMap(([key, typed]) => {
    const [piece, name] = key.split('/') as [MadePiece['piece'], MadePiece['name']];
    const value = valueIn(typed);
    return value === null || value === 0 ? [] : [{ piece, name, value }];
  });
}
