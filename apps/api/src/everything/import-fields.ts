import { ID_PATTERN } from '../http/id.ts';
import type { FieldError } from '../http/problem.ts';

const TIME = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/;

/** Reads the fields of one object, and notes each that cannot be used. What it gives for those is never stored. */
export class ImportFields {
  private readonly object: Readonly<Record<string, unknown>>;

  constructor(
    value: unknown,
    readonly pointer: string,
    private readonly errors: FieldError[],
  ) {
    const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
    this.object = isObject ? (value as Readonly<Record<string, unknown>>) : {};
    if (!isObject) this.errors.push({ pointer, detail: 'must be an object' });
  }

  id(name: string): string {
    return this.text(name, 36, (text) => (ID_PATTERN.test(text) ? null : 'must be a UUID in lower case'));
  }

  /** The id of something else in the same export. */
  idOf(name: string, known: ReadonlySet<string>): string {
    return this.text(name, 36, (text) => (known.has(text) ? null : 'must be the id of something in this export'));
  }

  time(name: string): string {
    const words = 'must be a time in UTC to the millisecond: 2026-01-31T18:30:00.000Z';
    return this.text(name, 30, (text) => (TIME.test(text) && !Number.isNaN(Date.parse(text)) ? null : words));
  }

  /** @param check says what is wrong with the text; null where nothing is */
  text(name: string, most: number, check: (text: string) => string | null = () => null): string {
    const value = this.object[name];
    if (typeof value !== 'string' || value.length > most)
      return this.wrong(name, `must be text of at most ${most} characters`, '');
    const wrong = value.includes('\0') ? 'must not hold a null character' : check(value);
    return wrong === null ? value : this.wrong(name, wrong, '');
  }

  whole(name: string, least: number, most: number): number {
    const value = this.object[name];
    if (typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most) return value;
    return this.wrong(name, `must be a whole number from ${least} to ${most}`, least);
  }

  choice<T extends string>(name: string, choices: readonly T[]): T {
    const found = choices.find((choice) => choice === this.object[name]);
    return found ?? this.wrong(name, `must be one of ${choices.join(', ')}`, choices[0] as T);
  }

  /** Null where the field is null. */
  orNull<T>(name: string, read: () => T): T | null {
    return this.object[name] === null ? null : read();
  }

  list<T>(name: string, read: (item: unknown, pointer: string) => T): T[] {
    const value = this.object[name];
    if (!Array.isArray(value)) return this.wrong(name, 'must be a list', []);
    return value.map((item, index) => read(item, `${this.pointer}/${name}/${index}`));
  }

  value(name: string): unknown {
    return this.object[name];
  }

  /** The object without these fields. */
  without(...names: readonly string[]): Record<string, unknown> {
    return Object.fromEntries(Object.entries(this.object).filter(([name]) => !names.includes(name)));
  }

  wrong<T>(name: string, detail: string, instead: T): T {
    this.errors.push({ pointer: `${this.pointer}/${name}`, detail });
    return instead;
  }
}
