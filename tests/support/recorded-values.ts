/** Fields and headers that differ from one run to the next, by the name they stand under. */
const VARYING = new Set([
  ...['id', 'key', 'prefix', 'secret', 'next', 'etag', 'ETag', 'webhook-timestamp', 'webhook-signature'],
  ...['createdAt', 'updatedAt', 'secretMadeAt', 'nextTryAt'],
]);

/** What was recorded beside what it is in this run: ids, keys, times, addresses. */
export class RecordedValues {
  private readonly now = new Map<string, string>();
  private readonly then = new Map<string, string>();

  /** Takes one for the other from here on. */
  bind(recorded: string, actual: string): void {
    this.now.set(recorded, actual);
    this.then.set(actual, recorded);
  }

  /** A recorded text as it has to be sent in this run. */
  asNow(text: string): string {
    return replaceAll(text, this.now);
  }

  /** A text of this run as it would have been recorded. */
  asRecorded(text: string): string {
    return replaceAll(text, this.then);
  }

  /** Data of this run as they would have been recorded; what varies is what stands at the same place in `recorded`. */
  dataAsRecorded(actual: unknown, recorded: unknown, name = ''): unknown {
    if (Array.isArray(actual)) {
      const items = Array.isArray(recorded) ? recorded : [];
      return actual.map((item, index) => this.dataAsRecorded(item, items[index], name));
    }
    if (typeof actual === 'object' && actual !== null) {
      const fields = (typeof recorded === 'object' && recorded !== null ? recorded : {}) as Record<string, unknown>;
      return Object.fromEntries(
        Object.entries(actual).map(([key, value]) => [key, this.dataAsRecorded(value, fields[key], key)]),
      );
    }
    if (typeof actual !== 'string') return actual;
    if (VARYING.has(name) && typeof recorded === 'string' && !this.then.has(actual)) this.bind(recorded, actual);
    return this.asRecorded(actual);
  }
}

const replaceAll = (text: string, values: ReadonlyMap<string, string>): string =>
  // A value may hold another: the longest first.
  [...values]
    .sort(([a], [b]) => b.length - a.length)
    .reduce((replaced, [from, to]) => replaced.replaceAll(from, to), text);
