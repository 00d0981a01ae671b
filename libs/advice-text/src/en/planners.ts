import type { Catalogue } from '../catalogue.ts';
import type { MissingCodes, PlannerErrors, PlannerWarningCodes, TheirNameCodes } from '../planner-codes.ts';
import { say } from '../say.ts';

const whereIs = (pointer: string): string => (pointer === '' ? 'the document' : `"${pointer}"`);

/** Why a name on the planner's side cannot be filled. */
const theirNames: Catalogue<TheirNameCodes> = {
  'no-slash': ({ pointer }) => `"${pointer}" must start with a slash: "/${pointer}".`,
  'tilde-not-escaped': ({ pointer }) => `in "${pointer}" a ~ must be written ~0.`,
  'name-reserved': ({ name }) => `"${name}" cannot be the name of a field.`,
  'element-not-numbered': ({ pointer }) => `in "${pointer}" give the number of the element for "-".`,
  'filled-above': ({ pointer, by }) => `"${pointer}" is filled by ${by}, so nothing fits below it.`,
  'filled-already': ({ pointer, by }) => `"${pointer}" is filled by ${by} already.`,
  'holds-others': ({ pointer, holds }) => `"${pointer}" holds ${holds}, so it cannot be a value itself.`,
  'list-with-key': ({ pointer, element, key }) =>
    `${whereIs(pointer)} cannot be a list ("${element}") and hold "${key}".`,
  'list-with-gap': ({ pointer, element }) =>
    `${whereIs(pointer)} is a list, and not every element before ${element} is named.`,
  'column-unnamed': ({ ourName }) => `${ourName} needs the name of a column.`,
  'column-is-formula': ({ column }) =>
    `A spreadsheet would run "${column}" as a formula; begin the column with a letter.`,
  'column-filled-already': ({ column, by }) => `The column "${column}" is filled by ${by} already.`,
};

/** What is wrong with what a planner is said to take. */
export const plannerErrors: Catalogue<PlannerErrors> = {
  'rounding-a-sheet': () =>
    'A sheet goes unrounded and says how far each length may be rounded: leave the rounding step out.',
  'rounding-step': ({ step, least, most, unit }) =>
    `${step} ${unit} is no step to round to: ${least} to ${most} ${unit}, or none.`,
  'unknown-name': ({ name }) =>
    `"${name}" is none of the sheet's names: write place/dimension, such as assembled/chest-width or sleeve/sleeve-length.`,
  'their-name': ({ fault }, reader) => say(theirNames, fault, reader),
  'naming-a-sheet': () => 'A sheet has its own names: leave the names out, or choose flat JSON or CSV.',
  'required-not-named': ({ name }) => `${name} is required but has no name on the planner's side.`,
};

/** Why a sheet has no value for a name. */
export const missing: Catalogue<MissingCodes> = {
  'unknown-name': ({ name }) => `${name} is none of the sheet's names.`,
  'not-in-sheet': ({ name, silhouette, construction }) => `This sheet (${silhouette}, ${construction}) has no ${name}.`,
  'no-advice': ({ reason }) => reason,
  'part-missing': ({ name }) => `The sheet gives no ${name}.`,
};

/** What to know before a sheet goes to a planner. */
export const plannerWarnings: Catalogue<PlannerWarningCodes> = {
  'left-out': ({ reason }, reader) => `Left out. ${say(missing, reason, reader)}`,
  'rounded-outside-limits': ({ step, unit }) => `No multiple of ${step} ${unit} lies within how far it may be rounded.`,
};
