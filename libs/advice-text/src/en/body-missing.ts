import type { BodyMissingCodes } from '#body';
import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import { bodyNotes } from './body-notes.ts';

/** Why a body has no value for a dimension, and what to do. */
export const bodyMissing: Catalogue<BodyMissingCodes> = {
  'not-measured': () => 'It was not measured, and nothing is filled in.',
  'not-asked-for': () => 'Nothing asked for it.',
  'not-estimated': () => 'It cannot be estimated: measure it.',
  'chest-needed': () => 'Sizes are read by chest: measure it, or give the chest girth.',
  'chest-or-age-needed': ({ figure }) =>
    `A ${figure}’s sizes are read by chest or by age: measure it, or give the chest girth or the age.`,
  'not-in-table': ({ table }) => `${table}, does not give it: measure it.`,
  'not-published': ({ figure }) => `No published table gives it for a ${figure}: measure it.`,
  'no-size-row': ({ note }, reader) => say(bodyNotes, note, reader),
};
