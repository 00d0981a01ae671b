import { fill, layOut } from '../json-shape.ts';
import type { Json } from '../planner-takes.ts';
import { theirNameError } from '../their-name-error.ts';
import type { Format } from './format.ts';
import { hasOwnNames, namedFields } from './named-fields.ts';

/** One JSON value: the planner's own document, or an object of our names. */
export const flat: Format = {
  contentType: 'application/json',
  rounds: true,
  nameFaults: (names) => layOut(names).faults.map(({ ourName, fault }) => theirNameError(ourName, fault)),
  write: (sheet, takes) => {
    const { names, value, warnings } = namedFields(sheet, takes);
    const payload = hasOwnNames(takes)
      ? fill(layOut(takes.names), value)
      : Object.fromEntries(names.map((name) => [name, value(name)]).filter(([, each]) => each !== undefined));
    return { payload: payload as Json, warnings };
  },
};
