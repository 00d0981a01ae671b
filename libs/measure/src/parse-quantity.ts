import { readAmount } from './amount.ts';
import type { DomainError } from './domain-error.ts';
import { measureError } from './measure-errors.ts';
import type { QuantityFault } from './quantity-fault.ts';
import { tidyText } from './tidy-text.ts';
import { writtenUnit, type Kind, type WrittenUnit } from './written-unit.ts';

/** A quantity as read: mm or g, and the unit to show it in again. */
interface Quantity<U extends string> {
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
  const refuse = refusal(text, kind);
  if (text.length > LONGEST) throw refuse('unreadable', { code: 'too-long', params: { longest: LONGEST } });
  const tidy = tidyText(text);
  if (tidy === '') throw refuse('unreadable', { code: 'empty', params: {} });
  if (/^- ?[\d.,]/.test(tidy)) throw refuse('out-of-range', { code: 'negative', params: {} });

  const [first, ...others] = splitParts(tidy, kind, refuse);
  const read = others.length === 0 ? single(first, kind, refuse, defaultUnit) : together(first, others, kind, refuse);
  if (read.size <= kind.max) return read;
  throw refuse('out-of-range', { code: 'too-large', params: {} });
}

type Refuse = (
  problem: 'unreadable' | 'ambiguous' | 'unit-missing' | 'out-of-range',
  fault: QuantityFault,
) => DomainError;

function refusal<U extends string>(text: string, { kind }: Kind<U>): Refuse {
  const shown = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return (problem, fault) => measureError(`${kind}-${problem}`, { kind, text: shown, fault });
}

function splitParts<U extends string>(tidy: string, kind: Kind<U>, refuse: Refuse): [Part<U>, ...Part<U>[]] {
  const parts: Part<U>[] = [];
  for (const [matched, number = '', name = ''] of tidy.matchAll(PART)) {
    if (matched === '') continue;
    const text = number.trim();
    const amount = readAmount(text);
    if ('problem' in amount) throw refuse(amount.problem, amount.fault);
    parts.push({ text, ...amount, unit: name === '' ? null : namedUnit(name, kind, refuse) });
  }
  return parts as [Part<U>, ...Part<U>[]];
}

function namedUnit<U extends string>(name: string, kind: Kind<U>, refuse: Refuse): WrittenUnit<U> {
  const unit = writtenUnit(name, kind);
  if (unit !== undefined) return unit;
  const known = Object.values(kind.written).flatMap(({ spellings }) => spellings.slice(0, 1));
  throw refuse('unreadable', { code: 'unknown-unit', params: { unit: name, known } });
}

function single<U extends string>(part: Part<U>, kind: Kind<U>, refuse: Refuse, defaultUnit?: U): Quantity<U> {
  if (part.unit !== null) return { size: part.value * part.unit.size, unit: part.unit.shownIn };
  if (defaultUnit !== undefined) return { size: part.value * kind.sizes[defaultUnit], unit: defaultUnit };
  throw refuse('unit-missing', { code: 'unit-missing', params: {} });
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
    throw refuse('ambiguous', { code: 'units-disagree', params: {} });
  if (!large.whole || small.value >= then.count)
    throw refuse('ambiguous', { code: 'smaller-unit-too-large', params: {} });
  return { size: large.value * large.unit.size + small.value * smallUnit.size, unit: large.unit.shownIn };
}
