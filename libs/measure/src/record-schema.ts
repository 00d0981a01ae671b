import type { MeasuredSchema } from './measured-schema.ts';
import type { UnitSpelling } from './quantity-readers.ts';

/** What may be said of any field. Absent and null both mean that it was left out; `default` is what then holds. */
interface Common {
  readonly optional?: true;
  readonly default?: string | number | boolean;
  readonly description?: string;
  readonly example?: unknown;
}

/** One field of a record: its kind, its limits (both ends included), whether it may be left out. */
export type FieldSchema = Common &
  (
    | { readonly kind: 'text'; readonly max: number }
    | { readonly kind: 'choice'; readonly of: readonly string[]; readonly onlyWhere?: OnlyWhere }
    | { readonly kind: 'number' | 'whole'; readonly min: number; readonly max: number }
    | { readonly kind: 'yes-no' }
    /** A list of texts, each at most `longest` characters. */
    | { readonly kind: 'texts'; readonly max: number; readonly longest: number }
    /** Names, each with a text of one line; at most `max`. */
    | { readonly kind: 'names'; readonly max: number; readonly longestName: number; readonly longest: number }
    | { readonly kind: 'day-or-time' }
    /** Of something else that is kept. */
    | { readonly kind: 'id' }
    | { readonly kind: 'measured'; readonly part: 'value' | 'unit' | 'text' | 'u'; readonly as: MeasuredSchema }
    | { readonly kind: 'record'; readonly fields: RecordSchema; readonly sparse?: true }
    | {
        readonly kind: 'list';
        readonly items: RecordSchema;
        readonly max: number;
        /** No two items have the same in all of these. */
        readonly distinct?: readonly string[];
      }
    | {
        /** One of several records: the first whose field, by which it is named here, is given; else `missing`. */
        readonly kind: 'either';
        readonly given: Readonly<Record<string, RecordSchema>>;
        readonly missing: RecordSchema;
      }
  );

/** The field belongs to records in which another field has this value; elsewhere it is null. */
interface OnlyWhere {
  readonly field: string;
  readonly is: string;
}

/** A kind of record, in the order in which its fields are shown and checked. Plain data. */
export type RecordSchema = Readonly<Record<string, FieldSchema>>;

/** The value of a field as a maker gives it. */
export type FieldValue<F> = F extends { kind: 'choice'; of: readonly (infer C)[] }
  ? C
  : F extends { kind: 'number' | 'whole' } | { kind: 'measured'; part: 'value' | 'u' }
    ? number
    : F extends { kind: 'yes-no' }
      ? boolean
      : F extends { kind: 'texts' }
        ? string[]
        : F extends { kind: 'names' }
          ? Readonly<Record<string, string>>
          : F extends { kind: 'measured'; part: 'unit'; as: infer M }
            ? UnitOf<M>
            : F extends { kind: 'text' | 'day-or-time' | 'id' } | { kind: 'measured'; part: 'text' }
              ? string
              : F extends { kind: 'record'; fields: infer S }
                ? RecordOf<S>
                : F extends { kind: 'list'; items: infer S }
                  ? RecordOf<S>[]
                  : F extends { kind: 'either'; given: infer G; missing: infer M }
                    ? AllOptional<Intersection<EachRecordOf<G[keyof G]>> & RecordOf<M>>
                    : never;

type UnitOf<M> = M extends MeasuredSchema
  ? UnitSpelling<
      M['quantity'] | (M['instead'] extends { quantity: infer Q extends MeasuredSchema['quantity'] } ? Q : never)
    >
  : never;
type EachRecordOf<S> = S extends unknown ? RecordOf<S> : never;
type EachStoredRecord<S> = S extends unknown ? StoredRecord<S> : never;
type Intersection<U> = (U extends unknown ? (one: U) => void : never) extends (all: infer I) => void ? I : never;
type AllOptional<T> = { readonly [K in keyof T]?: T[K] | null };
type OptionalKey<S> = { [K in keyof S]: S[K] extends { optional: true } ? K : never }[keyof S];

/** A record as a maker gives it: what is optional may be absent or null. */
export type RecordOf<S> = { readonly [K in Exclude<keyof S, OptionalKey<S>>]: FieldValue<S[K]> } & {
  readonly [K in OptionalKey<S>]?: FieldValue<S[K]> | null;
};

/** The value of a field as it is stored. */
type StoredValue<F> = F extends { kind: 'record'; fields: infer S; sparse: true }
  ? { readonly [K in keyof S]?: FieldValue<S[K]> }
  : F extends { kind: 'record'; fields: infer S }
    ? StoredRecord<S>
    : F extends { kind: 'list'; items: infer S }
      ? StoredRecord<S>[]
      : F extends { kind: 'either'; given: infer G; missing: infer M }
        ? EachStoredRecord<G[keyof G]> | StoredRecord<M>
        : FieldValue<F>;

/** Whether a field that was left out, or that does not belong to a record, is stored as null. */
type NullOf<F> = F extends { onlyWhere: object }
  ? null
  : F extends { default: unknown } | { kind: 'text' | 'texts' | 'names' } | { sparse: true }
    ? never
    : F extends { optional: true }
      ? null
      : never;

/** A record as it is stored: every field is there; what was left out is its default, or null. */
export type StoredRecord<S> = { readonly [K in keyof S]: StoredValue<S[K]> | NullOf<S[K]> };
