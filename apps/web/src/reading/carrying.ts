/** Notes that were read from a stored record, which they keep beside what is shown of it. */
interface FromRecord<R> {
  readonly record?: R;
}

/** One field of a record: `before` where what is written is still what was shown for it, else what is written now. */
export type Carry<N, R> = <F>(shown: (notes: N) => unknown, before: (record: R) => F, written: () => F) => F;

/**
 * The way back from notes to a record that loses nothing: the page shows less than a record holds (an uncertainty, when a measure
 * was taken, the unit it was given in), so a field that she has not changed goes back as it was stored. A field that the page does
 * not know at all goes with the rest of the record.
 */
export function carrying<N extends FromRecord<R>, R>(notes: N, read: (record: R) => N): Carry<N, R> {
  const { record } = notes;
  if (record === undefined) return (_shown, _before, written) => written();
  const asRead = read(record);
  return (shown, before, written) => (same(shown(notes), shown(asRead)) ? before(record) : written());
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
