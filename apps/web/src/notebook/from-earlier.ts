import { withoutGoneRules } from '#target-sheet';
import { blankDesign } from './blank.ts';
import type { DesignNotes } from './notebook.ts';

/** A saved design: fields that it does not have yet are blank, and rules that are gone are left out. */
export function designFromEarlier(saved: DesignNotes): DesignNotes {
  return { ...blankDesign(saved.ownEase.tape), ...saved, rules: withoutGoneRules(saved.rules) };
}
