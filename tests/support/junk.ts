import fc, { type Arbitrary } from 'fast-check';

/** Raw JSON, or what only looks like it, for the place of a value. */
const RAW = [
  'NaN',
  'Infinity',
  '1e308',
  '-1e308',
  '1e999',
  '1e-320',
  '-0',
  '-5',
  '123456789012345678901234567890',
  'null',
  'true',
  '""',
  '[]',
  '{}',
  '[[]]',
  '[null]',
  '{"value":94,"unit":"furlong"}',
  '{"value":-94,"unit":"cm"}',
  '{"value":1e308,"unit":"in"}',
  '{"value":1e-300,"unit":"mm"}',
  '{"text":"17 1/2"}',
  '{"__proto__":{"value":1}}',
  '{"constructor":{"prototype":{}}}',
  '{"toString":1}',
  '{"problems":1}',
  '{"value":1,"value":2}',
  '"\\ud800"',
  '"\\u0000"',
  '"\\u202e\\u0007"',
  `"${'x'.repeat(5000)}"`,
  `${'['.repeat(18_000)}`,
  `${'['.repeat(30)}${']'.repeat(30)}`,
  `${'{"a":'.repeat(3000)}1${'}'.repeat(3000)}`,
  `[${'1,'.repeat(20_000)}1]`,
  `[${'{},'.repeat(10_000)}{}]`,
  `[${'1,'.repeat(100_000)}1]`,
];

type Path = readonly (string | number)[];

/** JSON texts of a value, most of them spoilt in one place or a few, or as bytes: each byte is the character of its number. */
export function spoilt(values: Arbitrary<unknown>): Arbitrary<string> {
  const spoils = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...RAW)), { maxLength: 3 });
  const place = fc.double({ min: 0, max: 1, noNaN: true });
  const cut = seldom(place);
  const bytes = seldom(fc.tuple(place, fc.constantFrom(0xff, 0xc3, 0x80, 0x00)));
  return fc.tuple(values, spoils, cut, bytes).map(([value, places, end, byte]) => {
    let text = withRaw(value, places);
    if (end !== null) text = text.slice(0, Math.floor(end * text.length));
    const sent = Buffer.from(text).toString('latin1');
    if (byte === null) return sent;
    const at = Math.floor(byte[0] * sent.length);
    return sent.slice(0, at) + String.fromCharCode(byte[1]) + sent.slice(at);
  });
}

function seldom<T>(arbitrary: Arbitrary<T>): Arbitrary<T | null> {
  return fc.oneof({ weight: 15, arbitrary: fc.constant(null) }, { weight: 1, arbitrary });
}

/** The value as JSON with raw pieces in the place of some of its parts. */
function withRaw(value: unknown, places: readonly (readonly [number, string])[]): string {
  const copy = { root: structuredClone(value) };
  const raws: string[] = [];
  for (const [pick, raw] of places) {
    const paths = pathsIn(copy);
    const path = paths[pick % paths.length] ?? ['root'];
    put(copy, path, `raw-piece-${raws.push(raw) - 1}`);
  }
  return JSON.stringify(copy.root).replace(/"raw-piece-(\d+)"/g, (_, index: string) => raws[Number(index)] ?? 'null');
}

function pathsIn(value: unknown, above: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[...above, key], ...pathsIn(inner, [...above, key])]);
}

function put(value: object, path: Path, piece: string): void {
  const [last = ''] = path.slice(-1);
  const holder = path.slice(0, -1).reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], value);
  (holder as Record<string, unknown>)[last] = piece;
}
