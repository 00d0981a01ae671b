type Schema = Record<string, unknown>;

/**
 * Schemas as every tool reads them. A default is given in the description alone: generators take what has one for required. A reference stands
 * for itself, and an object has no fields but those it names.
 */
export function plainSchemas(schemas: Readonly<Record<string, object>>): Record<string, object> {
  return Object.fromEntries(Object.entries(schemas).map(([name, schema]) => [name, closed(plain(schema) as Schema)]));
}

function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, inner]) => [key, plain(inner)] as const);
  return withoutDefault(withoutSingleAllOf(Object.fromEntries(entries)));
}

function withoutSingleAllOf({ allOf, ...schema }: Schema): Schema {
  if (allOf === undefined) return schema;
  const [only, ...others] = allOf as Schema[];
  return others.length > 0 ? { ...schema, allOf } : { ...schema, ...only };
}

function withoutDefault(schema: Schema): Schema {
  const { default: value, description, ...rest } = schema;
  // A property may be called `default`; its schema is an object.
  if (value === undefined || typeof value === 'object') return schema;
  const words = `Default: ${String(value)}.`;
  return { ...rest, description: typeof description === 'string' ? `${description} ${words}` : words };
}

const closed = (schema: Schema): Schema =>
  'properties' in schema && schema['additionalProperties'] === undefined
    ? { ...schema, additionalProperties: false }
    : schema;
