import { Validator } from '@cfworker/json-schema';
import { Ajv2020 } from 'ajv/dist/2020.js';
import {
  MM_PER_SHEET_UNIT,
  targetSheetSchema,
  type AnyDimension,
  type JsonSchema,
  type TargetSheet,
} from '#target-sheet';
import { draw, understand } from '../consumer/draw.mjs';
import { outlineLaws, type Broken } from './outline-laws.ts';

/**
 * The schema with no room for fields it does not know: readers let a newer minor's fields through, we must not write any.
 * Sub-schemas of `if`, `then` and `else` only look at a part, and stay open.
 */
function closed(schema: JsonSchema): JsonSchema {
  const inside = (of: Readonly<Record<string, JsonSchema>>): Record<string, JsonSchema> =>
    Object.fromEntries(Object.entries(of).map(([name, part]) => [name, closed(part)]));
  return {
    ...schema,
    ...(schema.properties && { properties: inside(schema.properties), additionalProperties: false }),
    ...(schema.$defs && { $defs: inside(schema.$defs) }),
    ...(schema.items && { items: closed(schema.items) }),
    ...(schema.anyOf && { anyOf: schema.anyOf.map(closed) }),
  };
}

const options = { allErrors: true, strict: true } as const;
const valid = new Ajv2020(options).compile(targetSheetSchema);
const validClosed = new Ajv2020(options).compile(closed(targetSheetSchema));
/** A validator that shares no code with the first. */
const other = new Validator(targetSheetSchema as ConstructorParameters<typeof Validator>[0], '2020-12', false);

/** Terms add up to this, mm. */
const SUM = 1e-9;

/**
 * What holds of every sheet we make, in any unit: valid by the published schema, in two validators, and by its closed variant, once read
 * back from JSON; terms add up to their value; low ≤ value ≤ high; outlines are simple, and have the named extents and
 * the named lengths of joined edges; and a planner that nobody here wrote reads it and draws each outline. Use it in every test that makes a sheet.
 *
 * @throws Error that lists each law broken, and where.
 */
export function holdsSheetLaws(sheet: TargetSheet): void {
  const own = [...schemaLaws(sheet), ...dimensionLaws(sheet), ...outlineLaws(sheet)];
  // A planner may rely on the schema: it is shown only what keeps it.
  const broken = own.length > 0 ? own : consumerLaws(sheet);
  if (broken.length > 0) {
    const listed = broken.slice(0, 12).map(({ where, law }) => `  ${where}: ${law}`);
    throw new Error(`A sheet breaks ${broken.length} of its laws:\n${listed.join('\n')}`);
  }
}

function schemaLaws(sheet: TargetSheet): Broken[] {
  const document: unknown = JSON.parse(JSON.stringify(sheet));
  const byOther = other
    .validate(document)
    .errors.map(({ instanceLocation, error }) => ({ where: instanceLocation, law: `schema: ${error}` }));
  const byAjv = [valid, validClosed].flatMap((check) => {
    check(document);
    return (check.errors ?? []).map(({ instancePath, message, params }) => ({
      where: instancePath,
      law: `schema: ${message ?? ''} ${JSON.stringify(params)}`,
    }));
  });
  return [...byAjv, ...byOther];
}

/** The independent planner of `tests/consumer` reads the sheet as text and draws what has an outline. */
function consumerLaws(sheet: TargetSheet): Broken[] {
  const svg = draw(understand(JSON.stringify(sheet)));
  const outlines = sheet.pieces.filter(({ outline }) => outline).length;
  const polygons = svg.match(/<polygon points="(?:-?[\d.]+,-?[\d.]+ ?)+"/g) ?? [];
  return polygons.length === outlines
    ? []
    : [{ where: 'consumer', law: `drew ${polygons.length} of ${outlines} outlines` }];
}

function dimensionLaws(sheet: TargetSheet): Broken[] {
  const placed = [
    ...sheet.assembled.map((dimension) => ({ place: 'assembled', dimension })),
    ...sheet.pieces.flatMap(({ piece, dimensions }) => dimensions.map((dimension) => ({ place: piece, dimension }))),
  ];
  const growth = sheet.fabric.growth ?? { across: 0, along: 0 };
  return placed.flatMap(({ place, dimension }) =>
    brokenBy(dimension, growth, SUM / MM_PER_SHEET_UNIT[sheet.unit]).map((law) => ({
      where: `${place}/${dimension.name}`,
      law,
    })),
  );
}

function brokenBy(
  dimension: AnyDimension,
  growth: { readonly across: number; readonly along: number },
  tolerance: number,
): string[] {
  const { value, low, high, because } = dimension;
  if (value === null) {
    const asMade = 'asMade' in dimension ? dimension.asMade : null;
    return because.length > 0 || low !== undefined || high !== undefined || asMade !== null
      ? ['has no value, and terms, limits or a size as made']
      : [];
  }
  const laws: string[] = [];
  const sum = because.reduce((total, term) => total + term.value, 0);
  if (!(Math.abs(sum - value) <= tolerance)) laws.push(`its terms add up to ${sum}, not ${value}`);
  if (!((low ?? NaN) <= value && value <= (high ?? NaN))) laws.push(`not ${low} ≤ ${value} ≤ ${high}`);
  if ('noAdvice' in dimension) laws.push('has a value, and a reason for none');
  if ('asMade' in dimension) {
    const unwashed = (value + dimension.allowance) / (1 + growth[dimension.axis]);
    if (!(Math.abs((dimension.asMade ?? NaN) - unwashed) <= tolerance))
      laws.push(`as made ${dimension.asMade}, not ${unwashed}`);
  }
  return laws;
}
