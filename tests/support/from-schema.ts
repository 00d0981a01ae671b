import fc, { type Arbitrary } from 'fast-check';

/** The part of JSON Schema that the OpenAPI document uses. */
export interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly allOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly maxItems?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly format?: string;
}

type Schemas = Readonly<Record<string, Schema>>;

/** Values of a schema's shape; not all of them valid, since words do not tell everything. */
export function valuesOf(schema: Schema, schemas: Schemas): Arbitrary<unknown> {
  if (schema.$ref !== undefined) return valuesOf(schemas[schema.$ref.split('/').at(-1) ?? ''] ?? {}, schemas);
  const [only] = schema.allOf ?? [];
  if (only !== undefined) return valuesOf(only, schemas);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices !== undefined) return fc.oneof(...choices.map((choice) => valuesOf(choice, schemas)));
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  const types = [schema.type ?? 'null'].flat();
  return fc.oneof(...types.map((type) => valuesOfType(type, schema, schemas)));
}

function valuesOfType(type: string, schema: Schema, schemas: Schemas): Arbitrary<unknown> {
  const { minimum: min = -1e6, maximum: max = 1e6 } = schema;
  switch (type) {
    case 'string':
      return textsOf(schema);
    case 'integer':
      return fc.integer({ min: Math.ceil(min), max: Math.floor(max) });
    case 'number':
      return fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max, 0, 94, 17.5));
    case 'boolean':
      return fc.boolean();
    case 'array':
      return fc.array(valuesOf(schema.items ?? {}, schemas), { maxLength: Math.min(schema.maxItems ?? 6, 6) });
    case 'object':
      return objectsOf(schema, schemas);
    default:
      return fc.constant(null);
  }
}

const LENGTHS = ['17 1/2 in', '17½', '44,5 cm', '5\'4"', '1.2 m', '62 kg', '-2 in', '0', 'a yard'];

function textsOf({ format, maxLength = 60 }: Schema): Arbitrary<string> {
  if (format === 'uuid') return fc.uuid();
  const any = fc.string({ unit: 'grapheme', maxLength: Math.min(maxLength, 60) });
  return fc.oneof(any, fc.constantFrom(...LENGTHS, '2026-01-31', '2026-02-30'));
}

function objectsOf(
  { properties = {}, required = [], additionalProperties }: Schema,
  schemas: Schemas,
): Arbitrary<object> {
  if (typeof additionalProperties === 'object') {
    return fc.dictionary(fc.string({ minLength: 1, maxLength: 12 }), valuesOf(additionalProperties, schemas), {
      maxKeys: 4,
    });
  }
  const fields = Object.fromEntries(
    Object.entries(properties).map(([name, field]) => [name, valuesOf(field, schemas)]),
  );
  return fc.record(fields, { requiredKeys: [...required], noNullPrototype: true });
}
