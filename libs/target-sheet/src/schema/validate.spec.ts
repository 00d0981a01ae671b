import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleSheets } from '../../../../tests/target-sheet/samples/index.ts';
import type { JsonSchema } from './json-schema.ts';
import { targetSheetSchema } from './target-sheet-schema.ts';
import { validateAgainst } from './validate.ts';

const ajv = new Ajv2020({ allErrors: true, strict: true });
const byAjv = ajv.compile(targetSheetSchema);

/** Where ajv sees a flaw. An `if` and an `anyOf` are reported by ajv once more for themselves, and an `anyOf` for each of its schemas. */
function ajvPointers(value: unknown): string[] {
  byAjv(value);
  const errors = (byAjv.errors ?? []).filter(
    ({ keyword, schemaPath }) => keyword !== 'if' && keyword !== 'anyOf' && !/\/anyOf\/[1-9]/.test(schemaPath),
  );
  return [...new Set(errors.map(({ instancePath }) => instancePath))].toSorted();
}
const ourPointers = (value: unknown): string[] =>
  [...new Set(validateAgainst(targetSheetSchema, value).map(({ pointer }) => pointer))].toSorted();

const check = (schema: JsonSchema, value: unknown) =>
  validateAgainst(schema, value).map(({ pointer, code, params }) => [pointer, code, ...Object.values(params)]);

describe('our validator', () => {
  it('says what is wrong and where', () => {
    const schema: JsonSchema = {
      type: 'object',
      properties: {
        kind: { type: 'string', enum: ['knit', 'crochet'] },
        sizes: { type: 'array', items: { type: 'number', minimum: 0, maximum: 9 }, minItems: 1, maxItems: 2 },
        made: { type: 'integer' },
        'a/b~c': { anyOf: [{ type: 'number' }, { type: 'null' }] },
        name: { type: 'string', minLength: 1, maxLength: 3, pattern: '^[a-z]*$' },
      },
      required: ['kind'],
      additionalProperties: false,
    };
    expect(check(schema, { kind: 'knit', sizes: [1, 9], made: 3, 'a/b~c': null, name: 'abc' })).toEqual([]);
    expect(check(schema, {})).toEqual([['', 'field-missing', 'kind']]);
    expect(check(schema, [])).toEqual([['', 'wrong-type', ['object'], 'array']]);
    expect(check(schema, { kind: 'weave' })).toEqual([['/kind', 'not-among', ['knit', 'crochet']]]);
    expect(check(schema, { kind: 'knit', sizes: [] })).toEqual([['/sizes', 'too-few-items', 1]]);
    expect(check(schema, { kind: 'knit', sizes: [-1, 10, 'x'] })).toEqual([
      ['/sizes', 'too-many-items', 2],
      ['/sizes/0', 'below-minimum', 0],
      ['/sizes/1', 'above-maximum', 9],
      ['/sizes/2', 'wrong-type', ['number'], 'string'],
    ]);
    expect(check(schema, { kind: 'knit', made: 1.5 })).toEqual([['/made', 'wrong-type', ['integer'], 'number']]);
    expect(check(schema, { kind: 'knit', 'a/b~c': 'x' })).toEqual([
      ['/a~1b~0c', 'wrong-type', ['number', 'null'], 'string'],
    ]);
    expect(check(schema, { kind: 'knit', name: '' })).toEqual([['/name', 'too-short', 1]]);
    expect(check(schema, { kind: 'knit', name: 'abcd' })).toEqual([['/name', 'too-long', 3]]);
    expect(check(schema, { kind: 'knit', name: 'A' })).toEqual([['/name', 'pattern-mismatch', '^[a-z]*$']]);
    expect(check(schema, { kind: 'knit', more: 1 })).toEqual([['/more', 'field-unknown']]);
  });

  it('counts characters, not the halves of one', () => {
    expect(check({ type: 'string', maxLength: 1 }, '🧶')).toEqual([]);
  });

  it('takes no field of the machinery for a field of the document', () => {
    const schema: JsonSchema = { type: 'object', required: ['constructor'], properties: {} };
    expect(check(schema, {})).toEqual([['', 'field-missing', 'constructor']]);
    expect(check(schema, JSON.parse('{"constructor": 1, "__proto__": 2}'))).toEqual([]);
  });

  it('refuses numbers that JSON has not', () => {
    expect(check({ type: 'number' }, NaN)).toEqual([['', 'not-finite']]);
    expect(check({ type: 'number' }, Infinity)).toEqual([['', 'not-finite']]);
  });

  it('finds a schema without the part it points to', () => {
    expect(() => check({ $ref: '#/$defs/none' }, 1)).toThrow('#/$defs/none');
  });
});

describe('our validator and ajv on a sheet', () => {
  const junk = fc.oneof(
    fc.constantFrom(null, true, '', 'set-in', '1.7', 0, -1, 0.5, 1e308, [], {}, [[]], [1, 2]),
    fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<unknown>,
  );
  const places = sampleSheets.map((sheet) => placesIn(JSON.parse(JSON.stringify(sheet))));

  it('agree where a mutated sheet is wrong', () => {
    let wrong = 0;
    const mutation = fc.record({
      sheet: fc.nat(sampleSheets.length - 1),
      at: fc.array(fc.nat(1e6), { minLength: 1, maxLength: 3 }),
      what: fc.constantFrom('replace', 'delete', 'add'),
      value: junk,
    });
    fc.assert(
      fc.property(mutation, ({ sheet, at, what, value }) => {
        const document: unknown = JSON.parse(JSON.stringify(sampleSheets[sheet]));
        const known = places[sheet] ?? [];
        for (const index of at) mutate(document, known[index % known.length] ?? [], what, value);
        const flaws = ourPointers(document);
        expect(flaws).toEqual(ajvPointers(document));
        wrong += flaws.length > 0 ? 1 : 0;
      }),
      { numRuns: 1500 },
    );
    expect(wrong).toBeGreaterThan(300);
  });

  it('agree on what is no sheet at all', () => {
    fc.assert(
      fc.property(junk, (value) => {
        expect(ourPointers(value)).toEqual(ajvPointers(value));
      }),
    );
  });
});

type Path = readonly string[];

function placesIn(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inside]) => placesIn(inside, [...path, key]))];
}

/** Changes the place named, if the document still has it; the root is left alone. */
function mutate(document: unknown, path: Path, what: string, value: unknown): void {
  const key = path.at(-1);
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((at, step) => (at as Record<string, unknown> | null)?.[step], document);
  if (key === undefined || typeof holder !== 'object' || holder === null) return;
  // A list that stands where an object was has a length of its own.
  if (Array.isArray(holder) && !/^\d+$/.test(key)) return;
  const target = holder as Record<string, unknown>;
  if (what === 'add' && !Array.isArray(target)) target['fresh'] = value;
  else if (what === 'delete' && !Array.isArray(target)) delete target[key];
  else target[key] = value;
}
