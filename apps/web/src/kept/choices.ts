import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showSigned } from '../reading/numbers.ts';

const openingOf = ({ opening: { at, length } }: TargetSheet['design'], tape: Tape): string =>
  [say.design.opening[at], at === 'none' ? '' : showLength(length, tape)].join(' ').trim();

/** The choices of a sheet, each with its name. */
export function choicesOf({ design }: TargetSheet, tape: Tape): readonly (readonly [name: string, choice: string])[] {
  const words = say.design;
  const { category, chosen, tableTerms } = design.ease;
  const number = chosen ?? tableTerms;
  const ease = [category === null ? '' : words.ease[category], number === null ? '' : showSigned(number, tape)];
  return [
    [words.silhouette.legend, words.silhouette[design.silhouette]],
    [words.construction, say.construction[design.construction]],
    [words.neckline.legend, words.neckline[design.neckline]],
    [words.opening.legend, openingOf(design, tape)],
    [words.length.legend, words.length[design.length]],
    [words.ease.legend, ease.join(' ').trim()],
  ];
}
