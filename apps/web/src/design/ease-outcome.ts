import type { SheetDesign } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showPercent, showSigned } from '../reading/numbers.ts';

/** How the ease comes out, in words: as chosen, or what becomes of it, and how sure that is. */
export function easeOutcome(ease: SheetDesign['ease'] | null, tape: Tape): string {
  const words = say.design;
  const show = (mm: number | null | undefined): string | null => (mm == null ? null : showSigned(mm, tape));
  const [chosen, comes] = [show(ease?.chosen), show(ease?.tableTerms)];
  return [
    chosen === null || chosen === comes ? null : words.chosen(chosen),
    comes === null || ease?.lies == null ? null : words.lies(comes, ease.lies),
    ease?.chanceOfBand == null ? null : words.inBand(showPercent(ease.chanceOfBand)),
  ]
    .filter((line) => line !== null)
    .join(' ');
}
