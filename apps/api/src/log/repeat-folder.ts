/** So many kinds of entries are kept apart; beyond that, nothing is gained by folding. */
const MOST_KEYS = 1_000;

interface Seen {
  /** When one was last let through. */
  at: number;
  /** How many were left out since. */
  folded: number;
}

/** Lets one entry of a kind through in each window, and counts those that it leaves out: a flood becomes a line now and then. */
export class RepeatFolder {
  private readonly seen = new Map<string, Seen>();

  constructor(
    private readonly windowMs: number,
    private readonly now: () => number,
  ) {}

  /** How many of the kind were left out since the one before; null where this one is left out, too. */
  admit(key: string): number | null {
    const now = this.now();
    const before = this.seen.get(key);
    if (before !== undefined && now - before.at < this.windowMs) {
      before.folded++;
      return null;
    }
    if (this.seen.size >= MOST_KEYS) this.seen.clear();
    this.seen.set(key, { at: now, folded: 0 });
    return before?.folded ?? 0;
  }
}
