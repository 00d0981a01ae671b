import type { Texts } from '../texts.ts';
import { cautions } from './cautions.ts';
import { checks } from './checks.ts';
import { ease } from './ease.ts';
import { noAdvice } from './no-advice.ts';
import { notes } from './notes.ts';
import { remedies } from './remedies.ts';
import { sources } from './sources.ts';
import { terms } from './terms.ts';
import { wishes } from './wishes.ts';

/** English. */
export const en: Texts = {
  term: terms,
  source: sources,
  noAdvice,
  check: checks,
  remedy: remedies,
  wish: wishes,
  ease,
  note: notes,
  caution: cautions,
};
