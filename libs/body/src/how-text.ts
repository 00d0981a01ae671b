import type { How } from '#measure';

const TEXT: Readonly<Record<How, string>> = {
  trained: 'measured by a trained hand',
  home: 'measured at home',
  estimated: 'estimated by the maker',
  table: 'read in a size table',
};

/** How a value was come by, in the words a sheet's `because` uses. */
export function howText(how: How): string {
  return TEXT[how];
}
