import { measureError, type QuantityKind } from './measure-errors.ts';

/** A unit that a maker may write, and how it goes with others. `U` is the kind of unit the answer is shown in. */
export interface WrittenUnit<U extends string> {
  /** Lower-case, as `tidyText` leaves them; the first is the one to write. */
  readonly spellings: readonly string[];
  /** Millimetres or grams in one. */
  readonly size: number;
  /** The unit it is shown in again. */
  readonly shownIn: U;
  /** The smaller unit that may follow (5 ft 4 in), how many make one, and how its number looks without its name (5'4, 1m64). */
  readonly then?: { readonly unit: string; readonly count: number; readonly unnamed: RegExp };
}

/** What kind of quantity a text is read as. Errors have the codes `<kind>-unreadable`, `-ambiguous`, `-unit-missing`, `-out-of-range`. */
export interface Kind<U extends string> {
  readonly kind: QuantityKind;
  readonly written: Readonly<Record<string, WrittenUnit<U>>>;
  /** mm or g in one of each unit the product keeps. */
  readonly sizes: Readonly<Record<U, number>>;
  /** The largest that is believed, in mm or g. */
  readonly max: number;
}

/** The unit of that spelling, or undefined. */
export function writtenUnit<U extends string>(spelling: string, kind: Kind<U>): WrittenUnit<U> | undefined {
  return Object.values(kind.written).find(({ spellings }) => spellings.includes(spelling));
}

/** The code of the unit that a text names, by any spelling. @throws DomainError `unit-unknown` */
export function unitCode<U extends string>(text: string, kind: Kind<U>): U {
  if (Object.hasOwn(kind.sizes, text)) return text as U;
  const unit = writtenUnit(text.trim().toLowerCase(), kind);
  if (unit !== undefined && unit.size === kind.sizes[unit.shownIn]) return unit.shownIn;
  throw measureError('unit-unknown', { kind: kind.kind, text: text.slice(0, 20) });
}

/**
 * A number and the name of its unit, in mm or g; its sign is kept.
 *
 * @throws DomainError `unit-unknown`; `<kind>-out-of-range` when it is not a number, or beyond the largest either way.
 */
export function sizeFrom<U extends string>(value: number, unit: string, kind: Kind<U>): number {
  const size = value * kind.sizes[unitCode(unit, kind)];
  if (Math.abs(size) <= kind.max) return size;
  throw measureError(`${kind.kind}-out-of-range`, { kind: kind.kind, value, unit, fault: 'too-large' });
}
