import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import type { Flaw, FlawCodes, SheetErrors } from '../sheet-codes.ts';

/** How a part of a document breaks its schema, after where it is. */
const flaws: Catalogue<FlawCodes> = {
  'wrong-type': ({ types, found }) => `must be ${types.join(' or ')}, but is ${found}`,
  'not-the-constant': ({ constant }) => `must be ${JSON.stringify(constant)}`,
  'not-among': ({ known }) => `must be one of ${known.map((word) => word ?? 'null').join(', ')}`,
  'not-finite': () => 'must be a finite number',
  'below-minimum': ({ minimum }) => `must be at least ${minimum}`,
  'above-maximum': ({ maximum }) => `must be at most ${maximum}`,
  'too-short': ({ minLength }) => `must have at least ${minLength} characters`,
  'too-long': ({ maxLength }) => `must have at most ${maxLength} characters`,
  'pattern-mismatch': ({ pattern }) => `must look like ${pattern}`,
  'too-few-items': ({ minItems }) => `must have at least ${minItems} items`,
  'too-many-items': ({ maxItems }) => `must have at most ${maxItems} items`,
  'field-missing': ({ name }) => `has no ${name}`,
  'field-unknown': () => 'is not a field here',
};

/** What is wrong with a target sheet. */
export const sheetErrors: Catalogue<SheetErrors> = {
  'title-too-long': ({ longest }) => `A title has at most ${longest} characters.`,
  'sheet-format-unknown': ({ format }) => `This is no target sheet: its "format" should be "${format}".`,
  'sheet-version-too-new': ({ version, major }) =>
    `This sheet is of version ${version}; versions ${major}.0 and up to the next whole number can be read here. Ask for it in version ${major}, or update Easewright.`,
  'sheet-invalid': ({ flaws: named, more }, reader) => {
    const each = named.map((flaw: Flaw) => `${flaw.pointer || 'the sheet'} ${say(flaws, flaw, reader)}`);
    return `This target sheet cannot be read: ${each.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
  },
};
