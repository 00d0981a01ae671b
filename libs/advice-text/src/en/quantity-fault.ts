import type { QuantityFault, QuantityFaults, QuantityKind } from '#measure';

/** What is said of lengths and of masses: the largest that is taken, texts that would be right, and the units' names. */
export const QUANTITY_WORDS = {
  length: {
    largest: '10 m',
    examples: '17 1/2 in, 44.5 cm or 445 mm',
    howToGive: 'give value and unit (mm, cm or in), or a text such as “17 1/2 in”',
    units: 'mm, cm or [in_i] (in is understood too)',
  },
  mass: {
    largest: '1000 kg',
    examples: '62 kg, 600 g, 140 lb or 11 st 4 lb',
    howToGive: 'give value and unit (kg, g or lb), or a text such as “62 kg”',
    units: 'g, kg or [lb_av] (lb is understood too)',
  },
} as const;

const FAULTS: {
  readonly [Code in keyof QuantityFaults]: (params: QuantityFaults[Code], kind: QuantityKind) => string;
} = {
  'too-long': ({ longest }, kind) => `it is longer than ${longest} characters. ${writeOne(kind)}`,
  empty: (_, kind) => `it is empty. ${writeOne(kind)}`,
  negative: (_, kind) => `a ${kind} is not less than nothing`,
  'too-large': (_, kind) => `it is more than ${QUANTITY_WORDS[kind].largest}; check the number and its unit`,
  'no-number': () => 'there is no number in it',
  'several-numbers': () => 'it is more than one number; write one, such as 17 1/2 or 17.5',
  'comma-ambiguous': ({ plain, decimal }) => `it may be ${plain} or ${decimal}; write the one you mean`,
  'divided-by-zero': ({ numerator }) => `nothing can be divided into 0 parts, as ${numerator}/0 says`,
  'improper-fraction': ({ fraction, example }) =>
    `${fraction} is not a part of one; write a whole number, a space and a fraction, such as ${example}`,
  'unit-missing': (_, kind) => `its unit is missing. ${writeOne(kind)}`,
  'unknown-unit': ({ unit, known }) => `“${unit}” is not one of the units ${known.join(', ')}`,
  'units-disagree': (_, kind) => `these numbers and units do not make one ${kind}. ${writeOne(kind)}`,
  'smaller-unit-too-large': (_, kind) => `the two numbers do not add up to one ${kind}. ${writeOne(kind)}`,
};

const writeOne = (kind: QuantityKind): string => `Write ${QUANTITY_WORDS[kind].examples}`;

/** Why a text is not one length or mass, to go on after "but"; without its full stop. */
export function quantityFault({ code, params }: QuantityFault, kind: QuantityKind): string {
  return (FAULTS[code] as (params: object, kind: QuantityKind) => string)(params, kind);
}
