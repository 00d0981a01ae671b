import type { CommonSourceCodes, How } from '#measure';
import type { Catalogue } from '../catalogue.ts';

const HOW: Readonly<Record<How, string>> = {
  trained: 'measured by a trained hand',
  home: 'measured at home',
  estimated: 'estimated by the maker',
  table: 'read in a size table',
};

/** Where a value is from, whatever it is of. */
export const commonSources: Catalogue<CommonSourceCodes> = {
  measured: ({ how }) => HOW[how],
  assumed: () => 'assumed',
  publication: ({ title }) => title,
};
