import type { SheetDesign } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showPercent, showSigned } from '../reading/numbers.ts';

/** The resulting ease in words: the number, its band, and the chance that the finished sweater has it. */
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
