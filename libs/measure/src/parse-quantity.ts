import { readAmount } from './amount.ts';
import { DomainError } from './domain-error.ts';
import { tidyText } from './tidy-text.ts';
import type { WrittenUnit } from './unit-table.ts';

/** What kind of quantity a text is read as. Errors have the codes `<what>-unreadable`, `-ambiguous`, `-unit-missing`, `-out-of-range`. */
export interface Kind<U extends string> {
  readonly what: 'length' | 'mass';
  readonly units: Readonly<Record<string, WrittenUnit<U>>>;
  /** The largest that is believed, in mm or g, and in words. */
  readonly max: number;
  readonly maxInWords: string;
  /** Texts that would be right, for the messages. */
  readonly examples: string;
}

export interface Quantity<U extends string> {
  /** In mm or g. */
  readonly size: number;
  readonly unit: U;
}

interface Part<U extends string> {
  readonly text: string;
  readonly value: number;
  readonly whole: boolean;
  readonly unit: WrittenUnit<U> | null;
}

/** Nobody types a longer measurement; what is longer is a pasted text. */
const LONGEST = 40;
/** A number (its characters in any order, sorted out by `readAmount`), then the name of a unit with or without its full stop. */
const PART = /([\d.,/ -]*)([^\d.,/ -]*)((?<=[a-z])\.(?!\d))?/g;

/** Reads one quantity: a number with its unit (or the default one), or a larger and a smaller unit together (5 ft 4 in). */
export function parseQuantity<U extends string>(text: string, kind: Kind<U>, defaultUnit?: U): Quantity<U> {
  const refuse = refusal(text, kind.what);
  if (text.length > LONGEST)
    throw refuse('unreadable', `it is longer than ${LONGEST} characters. Write ${kind.examples}.`);
  const tidy = tidyText(text);
  if (tidy === '') throw refuse('unreadable', `it is empty. Write ${kind.examples}.`);
  if (/^-\s?[\d.,]/.test(tidy)) throw refuse('out-of-range', `a ${kind.what} is not less than nothing.`);

  const parts = splitParts(tidy, kind, refuse);
  const read = parts.length === 1 ? single(parts, kind, refuse, defaultUnit) : together(parts, kind, refuse);
  if (!(read.size <= kind.max))
    throw refuse('out-of-range', `it is more than ${kind.maxInWords}; check the number and its unit.`);
  return read;
}

type Refuse = (problem: 'unreadable' | 'ambiguous' | 'unit-missing' | 'out-of-range', why: string) => DomainError;

function refusal(text: string, what: string): Refuse {
  const shown = text.length > LONGEST ? `${[...text].slice(0, LONGEST).join('')}…` : text;
  return (problem, why) => new DomainError(`${what}-${problem}`, `“${shown}” was read as a ${what}, but ${why}`);
}

function splitParts<U extends string>(tidy: string, kind: Kind<U>, refuse: Refuse): Part<U>[] {
  const parts: Part<U>[] = [];
  for (const [matched, number = '', name = ''] of tidy.matchAll(PART)) {
    if (matched === '') continue;
    const text = number.trim();
    const amount = readAmount(text);
    if ('problem' in amount) throw refuse(amount.problem, `${amount.why}.`);
    parts.push({ text, ...amount, unit: name === '' ? null : namedUnit(name, kind, refuse) });
  }
  return parts;
}

function namedUnit<U extends string>(name: string, kind: Kind<U>, refuse: Refuse): WrittenUnit<U> {
  const units = Object.values(kind.units);
  const unit = units.find(({ spellings }) => spellings.includes(name));
  if (unit !== undefined) return unit;
  throw refuse(
    'unreadable',
    `“${name}” is not one of the units ${units.map(({ spellings }) => spellings[0]).join(', ')}.`,
  );
}

function single<U extends string>(
  parts: readonly Part<U>[],
  kind: Kind<U>,
  refuse: Refuse,
  defaultUnit: U | undefined,
): Quantity<U> {
  const [part] = parts as [Part<U>];
  const unit = part.unit ?? Object.values(kind.units).find(({ spellings }) => spellings.includes(defaultUnit ?? ''));
  if (unit === undefined) throw refuse('unit-missing', `its unit is missing. Write ${kind.examples}.`);
  return { size: part.value * unit.size, unit: part.unit?.shownIn ?? defaultUnit ?? unit.shownIn };
}

/** A whole number of the larger unit and less than one of them in the smaller. */
function together<U extends string>(parts: readonly Part<U>[], kind: Kind<U>, refuse: Refuse): Quantity<U> {
  const [large, small, third] = parts as [Part<U>, Part<U>, Part<U> | undefined];
  const follows = large.unit?.then;
  const smallUnit = follows && kind.units[follows.unit];
  const named = small.unit === null ? follows?.unnamed.test(small.text) : small.unit === smallUnit;
  if (third !== undefined || large.unit === null || smallUnit === undefined || !named)
    throw refuse('ambiguous', `these numbers and units do not make one ${kind.what}. Write ${kind.examples}.`);
  const rest = small.value * smallUnit.size;
  if (!large.whole || rest >= large.unit.size)
    throw refuse('ambiguous', `the two numbers do not add up to one ${kind.what}. Write ${kind.examples}.`);
  return { size: large.value * large.unit.size + rest, unit: large.unit.shownIn };
}
