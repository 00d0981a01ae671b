export { DomainError } from './domain-error.ts';
export { errorsOf } from './errors-of.ts';
export type { MeasureErrors, QuantityKind, UnreadText, UnusableNumber } from './measure-errors.ts';
export type { QuantityFault, QuantityFaults } from './quantity-fault.ts';
export { formatLength, inchesText } from './format-length.ts';
export { HOWS, isMeasured, type How } from './how.ts';
export { LENGTH_UNITS, MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
export { GRAMS_PER_UNIT, MASS_UNITS, type MassUnit } from './mass-unit.ts';
export { normalCdf, normalQuantile } from './normal-distribution.ts';
export type { Message, MessageOf, NoParams, Param, Params } from './message.ts';
export type { Note } from './note.ts';
export { MAX_LENGTH_MM } from './length-kind.ts';
export { MAX_MASS_GRAMS } from './mass-kind.ts';
export {
  lengthFrom,
  parseLength,
  parseLengthDifference,
  unitOf,
  type LengthOptions,
  type ParsedLength,
} from './parse-length.ts';
export { massFrom, massUnitOf, parseMass, type ParsedMass } from './parse-mass.ts';
export { polygonArea } from './polygon-area.ts';
export { propagate, propagateCovariance } from './propagate.ts';
export type { CommonSourceCodes } from './source-codes.ts';
export { roundTo } from './round-to.ts';
export {
  add,
  divide,
  exactly,
  input,
  multiply,
  scale,
  squareRoot,
  standardUncertainty,
  subtract,
  type Correlation,
  type Uncertain,
} from './uncertain.ts';
export type { Measured, Size } from './measured.ts';
export { chosenFields, measuredFields } from './measured-fields.ts';
export { readingOf, unitsOf, type Limits, type MeasuredSchema } from './measured-schema.ts';
export { QUANTITIES, type QuantityName, type UnitSpelling } from './quantity-readers.ts';
export { readMeasured } from './read-measured.ts';
export type { FieldSchema, FieldValue, RecordOf, RecordSchema, StoredRecord } from './record-schema.ts';
export { storedRecord } from './stored-record.ts';
export { HOW_DEFAULT, TAKEN_FIELDS } from './taken-fields.ts';
export { THICKNESS_RECORD } from './thickness-record.ts';
export {
  abs,
  atLeast,
  atMost,
  besideLeast,
  bySign,
  constant,
  hypot,
  leg,
  max,
  min,
  minus,
  plus,
  positive,
  product,
  quotient,
  root,
  rootWithin,
  sqrt,
  times,
  unknown,
  whereKnown,
  type Operation,
  type Quantity,
  type Root,
  type Sum,
} from './quantity.ts';
