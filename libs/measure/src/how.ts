/** How a value was come by, most trusted first; sets its standard uncertainty where none is given. */
export const HOWS = ['trained', 'home', 'estimated', 'table'] as const;
export type How = (typeof HOWS)[number];

const TEXT: Readonly<Record<How, string>> = {
  trained: 'measured by a trained hand',
  home: 'measured at home',
  estimated: 'estimated by the maker',
  table: 'read in a size table',
};

/** Whether a tape was laid, whoever held it; what else is known was guessed or read. */
export const isMeasured = (how: How): boolean => how === 'trained' || how === 'home';

/** The same in the words a sheet's `because` uses. */
export function howText(how: How): string {
  return TEXT[how];
}
