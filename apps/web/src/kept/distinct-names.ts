import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { choicesOf } from './choices.ts';
import type { KeptSheet } from '../notebook/kept-sheet.ts';

/** What distinguishes a kept sheet from the others. */
export interface SheetName {
  readonly title: string;
  /** The choices in which it differs from another of the same title; often none. */
  readonly choice: string;
  /** Its day; with the time where another is from the same day, to the second if necessary. */
  readonly when: string;
  /** Everything in one line; the title alone where it is unique. */
  readonly line: string;
}

export const titleOf = (sheet: Pick<KeptSheet, 'title'>): string => sheet.title || say.keep.untitled;

/** A distinct name for every kept sheet, in their order. */
export function distinctNames(sheets: readonly KeptSheet[], tape: Tape): readonly SheetName[] {
  const choices = sheets.map(({ sheet }) => (sheet === null ? [] : choicesOf(sheet, tape)));
  return sheets.map((kept, own) => {
    const title = titleOf(kept);
    const alike = sheets.flatMap((other, i) => (i !== own && titleOf(other) === title ? [choices[i] ?? []] : []));
    const choice = (choices[own] ?? [])
      .filter(([, text], i) => alike.some((other) => other[i] !== undefined && other[i][1] !== text))
      .map(([name, text]) => `${name}: ${text}`)
      .join(', ');
    const when = whenOf(
      kept,
      sheets.filter((_, i) => i !== own),
    );
    const line = alike.length === 0 ? title : [title, choice, when].filter((part) => part !== '').join(', ');
    return { title, choice, when, line };
  });
}

const DAY: Intl.DateTimeFormatOptions = { year: 'numeric', month: 'numeric', day: 'numeric' };
const MINUTE: Intl.DateTimeFormatOptions = { ...DAY, hour: 'numeric', minute: '2-digit' };
const SECOND: Intl.DateTimeFormatOptions = { ...MINUTE, second: '2-digit' };

/** Only as precise as it takes to differ from all others. */
function whenOf({ createdAt }: KeptSheet, others: readonly KeptSheet[]): string {
  const told = (at: string, fineness: Intl.DateTimeFormatOptions): string =>
    new Date(at).toLocaleString(navigator.language, fineness);
  const enough = [DAY, MINUTE].find((it) => others.every((other) => told(other.createdAt, it) !== told(createdAt, it)));
  return told(createdAt, enough ?? SECOND);
}
