import { readAmount } from './amount.ts';
import { DomainError } from './domain-error.ts';
import { tidyText } from './tidy-text.ts';
import { writtenUnit, type Kind, type WrittenUnit } from './written-unit.ts';

/** A quantity as read: mm or g, and the unit to show it in again. */
export interface Quantity<U extends string> {
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
  if (/^- ?[\d.,]/.test(tidy)) throw refuse('out-of-range', `a ${kind.what} is not less than nothing.`);

  const [first, ...others] = splitParts(tidy, kind, refuse);
  const read = others.length === 0 ? single(first, kind, refuse, defaultUnit) : together(first, others, kind, refuse);
  if (read.size <= kind.max) return read;
  throw refuse('out-of-range', `it is more than ${kind.maxInWords}; check the number and its unit.`);
}

type Refuse = (problem: 'unreadable' | 'ambiguous' | 'unit-missing' | 'out-of-range', why: string) => DomainError;

function refusal(text: string, what: string): Refuse {
  const shown = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return (problem, why) => new DomainError(`${what}-${problem}`, `“${shown}” was read as a ${what}, but ${why}`);
}

function splitParts<U extends string>(tidy: string, kind: Kind<U>, refuse: Refuse): [Part<U>, ...Part<U>[]] {
  const parts: Part<U>[] = [];
  for (const [matched, number = '', name = ''] of tidy.matchAll(PART)) {
    if (matched === '') continue;
    const text = number.trim();
    const amount = readAmount(text);
    if ('problem' in amount) throw refuse(amount.problem, `${amount.why}.`);
    parts.push({ text, ...amount, unit: name === '' ? null : namedUnit(name, kind, refuse) });
  }
  return parts as [Part<U>, ...Part<U>[]];
}

function namedUnit<U extends string>(name: string, kind: Kind<U>, refuse: Refuse): WrittenUnit<U> {
  const unit = writtenUnit(name, kind);
  if (unit !== undefined) return unit;
  const known = Object.values(kind.written).map(({ spellings }) => spellings[0]);
  throw refuse('unreadable', `“${name}” is not one of the units ${known.join(', ')}.`);
}

function single<U extends string>(part: Part<U>, kind: Kind<U>, refuse: Refuse, defaultUnit?: U): Quantity<U> {
  if (part.unit !== null) return { size: part.value * part.unit.size, unit: part.unit.shownIn };
  if (defaultUnit !== undefined) return { size: part.value * kind.sizes[defaultUnit], unit: defaultUnit };
  throw refuse('unit-missing', `its unit is missing. Write ${kind.examples}.`);
}

/** A whole number of the larger unit and less than one of them in the smaller. */
function together<U extends string>(
  large: Part<U>,
  [small, ...more]: readonly Part<U>[],
  kind: Kind<U>,
  refuse: Refuse,
): Quantity<U> {
  const then = large.unit?.then;
  const smallUnit = then && kind.written[then.unit];
  const belongs = small?.unit === null ? then?.unnamed.test(small.text) : small?.unit === smallUnit;
  if (!large.unit || !then || !smallUnit || !small || !belongs || more.length > 0)
    throw refuse('ambiguous', `these numbers and units do not make one ${kind.what}. Write ${kind.examples}.`);
  if (!large.whole || small.value >= then.count)
    throw refuse('ambiguous', `the two numbers do not add up to one ${kind.what}. Write ${kind.examples}.`);
  return { size: large.value * large.unit.size + small.value * smallUnit.size, unit: large.unit.shownIn };
}
