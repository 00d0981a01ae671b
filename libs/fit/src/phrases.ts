/** So many texts are kept; the next one starts anew, since the numbers in them come from requests without end. */
const MOST = 5000;

/** Numbers beyond it are not kept, so that two of them make one key. */
const REACH = 2 ** 19;

/**
 * Texts that one sheet after the other says again, made once. Each is told apart by the words it is about and by two
 * whole numbers.
 */
export class Phrases {
  readonly #kept = new Map<string, Map<number, string>>();
  #count = 0;

  /** The text that was made for these before, or what `make` gives, which must hang on nothing else. */
  of(about: string, first: number, second: number, make: () => string): string {
    if (!(Math.abs(first) < REACH && Math.abs(second) < REACH)) return make();
    const key = first * 2 * REACH + second;
    const before = this.#kept.get(about)?.get(key);
    if (before !== undefined) return before;
    const text = make();
    this.#keep(about, key, text);
    return text;
  }

  #keep(about: string, key: number, text: string): void {
    if (this.#count === MOST) {
      this.#kept.clear();
      this.#count = 0;
    }
    this.#count++;
    const alike = this.#kept.get(about);
    if (alike) alike.set(key, text);
    else this.#kept.set(about, new Map([[key, text]]));
  }
}
