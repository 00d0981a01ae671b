import type { Flaw, FlawMessage } from '#advice-text';
import type { JsonSchema } from './json-schema.ts';

type Defs = Readonly<Record<string, JsonSchema>>;

/** Every flaw of a JSON value by a schema written in our part of JSON Schema 2020-12; an empty list when it is valid. */
export function validateAgainst(schema: JsonSchema, value: unknown): Flaw[] {
  return [...flaws(schema, value, '', schema.$defs ?? {})];
}

function* flaws(schema: JsonSchema, value: unknown, pointer: string, defs: Defs): Generator<Flaw> {
  if (schema.$ref !== undefined) yield* flaws(resolve(schema.$ref, defs), value, pointer, defs);
  if (schema.anyOf) {
    yield* noneOf(schema.anyOf, value, pointer, defs);
    return;
  }
  const wrong = [wrongKind, wrongNumber, wrongString, wrongSize].flatMap((look) => look(schema, value) ?? []);
  yield* wrong.map((flaw) => ({ ...flaw, pointer }));
  if (Array.isArray(value)) yield* itemFlaws(schema, value, pointer, defs);
  else if (isObject(value)) yield* fieldFlaws(schema, value, pointer, defs);
  if (schema.if) {
    const holds = flaws(schema.if, value, pointer, defs).next().done === true;
    yield* flaws((holds ? schema.then : schema.else) ?? {}, value, pointer, defs);
  }
}

/** Where none of some schemas holds: what is wrong by the first, or that it is of none of their types. */
function* noneOf(choices: readonly JsonSchema[], value: unknown, pointer: string, defs: Defs): Generator<Flaw> {
  const [main] = choices;
  if (!main || choices.some((choice) => flaws(choice, value, pointer, defs).next().done === true)) return;
  const types = choices.flatMap(({ type }) => type ?? []);
  if (types.some((type) => typesOf(value).includes(type))) yield* flaws(main, value, pointer, defs);
  else yield { code: 'wrong-type', params: { types, found: typesOf(value).at(-1)! }, pointer };
}

function resolve(ref: string, defs: Defs): JsonSchema {
  const found = defs[ref.replace('#/$defs/', '')];
  if (!found) throw new TypeError(`The schema has no ${ref}.`);
  return found;
}

function* itemFlaws(schema: JsonSchema, list: readonly unknown[], pointer: string, defs: Defs): Generator<Flaw> {
  if (!schema.items) return;
  for (const [index, item] of list.entries()) yield* flaws(schema.items, item, `${pointer}/${index}`, defs);
}

function* fieldFlaws(
  schema: JsonSchema,
  value: Readonly<Record<string, unknown>>,
  pointer: string,
  defs: Defs,
): Generator<Flaw> {
  for (const name of schema.required ?? []) {
    if (!Object.hasOwn(value, name)) yield { code: 'field-missing', params: { name }, pointer };
  }
  for (const [name, inside] of Object.entries(value)) {
    const at = `${pointer}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    const known = Object.hasOwn(schema.properties ?? {}, name) ? schema.properties?.[name] : undefined;
    const rule = known ?? schema.additionalProperties ?? true;
    if (rule === false) yield { code: 'field-unknown', params: {}, pointer: at };
    else if (rule !== true) yield* flaws(rule, inside, at, defs);
  }
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function typesOf(value: unknown): readonly string[] {
  if (value === null) return ['null'];
  if (Array.isArray(value)) return ['array'];
  if (typeof value === 'number') return Number.isInteger(value) ? ['integer', 'number'] : ['number'];
  return [typeof value];
}

type Look = (schema: JsonSchema, value: unknown) => FlawMessage | undefined;

const wrongKind: Look = (schema, value) => {
  const { type } = schema;
  if (type !== undefined && !typesOf(value).includes(type))
    return { code: 'wrong-type', params: { types: [type], found: typesOf(value).at(-1)! } };
  if (schema.const !== undefined && value !== schema.const)
    return { code: 'not-the-constant', params: { constant: schema.const } };
  if (schema.enum && !schema.enum.some((word) => word === value))
    return { code: 'not-among', params: { known: schema.enum } };
  return undefined;
};

const wrongNumber: Look = ({ minimum, maximum }, value) => {
  if (typeof value !== 'number') return undefined;
  if (!Number.isFinite(value)) return { code: 'not-finite', params: {} };
  if (minimum !== undefined && value < minimum) return { code: 'below-minimum', params: { minimum } };
  if (maximum !== undefined && value > maximum) return { code: 'above-maximum', params: { maximum } };
  return undefined;
};

const wrongString: Look = (schema, value) => {
  if (typeof value !== 'string') return undefined;
  const { minLength = 0, maxLength = Infinity, pattern } = schema;
  const length = [...value].length;
  if (length < minLength) return { code: 'too-short', params: { minLength } };
  if (length > maxLength) return { code: 'too-long', params: { maxLength } };
  if (pattern !== undefined && !new RegExp(pattern, 'u').test(value))
    return { code: 'pattern-mismatch', params: { pattern } };
  return undefined;
};

const wrongSize: Look = (schema, value) => {
  if (!Array.isArray(value)) return undefined;
  const { minItems = 0, maxItems = Infinity } = schema;
  if (value.length < minItems) return { code: 'too-few-items', params: { minItems } };
  if (value.length > maxItems) return { code: 'too-many-items', params: { maxItems } };
  return undefined;
};
