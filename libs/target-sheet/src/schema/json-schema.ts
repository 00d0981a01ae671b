type TypeName = 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean' | 'null';

/** The part of JSON Schema 2020-12 that our schemas are written in, and that `validateAgainst` knows. */
export interface JsonSchema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly $ref?: `#/$defs/${string}`;
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly title?: string;
  readonly description?: string;
  readonly type?: TypeName;
  /** One of these holds; what is wrong is said by the first. */
  readonly anyOf?: readonly JsonSchema[];
  readonly const?: string | number | boolean | null;
  readonly enum?: readonly string[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: JsonSchema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly if?: JsonSchema;
  readonly then?: JsonSchema;
  readonly else?: JsonSchema;
}

/** An object of exactly these fields, all required but those named as optional; fields a newer minor adds are let through. */
export function objectOf(
  description: string,
  properties: Readonly<Record<string, JsonSchema>>,
  optional: readonly string[] = [],
): JsonSchema {
  return {
    type: 'object',
    description,
    properties,
    required: Object.keys(properties).filter((name) => !optional.includes(name)),
  };
}

export const listOf = (description: string, items: JsonSchema): JsonSchema => ({ type: 'array', description, items });
export const oneOf = (description: string, words: readonly string[]): JsonSchema => ({
  type: 'string',
  description,
  enum: words,
});
export const text = (description: string): JsonSchema => ({ type: 'string', description });
export const number = (description: string, limits: Pick<JsonSchema, 'minimum' | 'maximum'> = {}): JsonSchema => ({
  type: 'number',
  description,
  ...limits,
});
/** The same, or null. */
export const orNull = ({ description, ...schema }: JsonSchema): JsonSchema => ({
  ...(description !== undefined && { description }),
  anyOf: [schema, { type: 'null' }],
});
