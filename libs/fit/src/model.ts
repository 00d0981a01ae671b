import { workOutArmhole, workOutBody, workOutWidths } from './body-shape.ts';
import type { Decisions } from './decisions.ts';
import { workOutGirths } from './girths.ts';
import { workOutLengths } from './lengths.ts';
import { workOutNeck } from './neck.ts';
import { workOutSleeve } from './sleeve-shape.ts';
import { INPUT_COUNT, Row } from './slots.ts';
import { workOutWearing } from './wearing.ts';

/**
 * The whole model as one function of its inputs: from measures, choices and rules to every finished measurement and
 * every check's need and have. An input that is not known is NaN, and so is all that needs it.
 */
export class Model {
  readonly #inputs: Float64Array;
  readonly #decisions: Decisions;

  constructor(inputs: Float64Array, decisions: Decisions) {
    this.#inputs = inputs;
    this.#decisions = decisions;
  }

  /** Works out `row` (always one for the same model), with the number in place `nudged` moved by `by`; −1 nudges none. */
  workOut(row: Row, nudged = -1, by = 0): Float64Array {
    row.v.set(this.#inputs);
    row.nudged = nudged;
    row.by = by;
    if (nudged >= 0 && nudged < INPUT_COUNT) row.v[nudged] = row.v[nudged]! + by;
    const d = this.#decisions;
    workOutGirths(row, d);
    workOutLengths(row, d);
    workOutWidths(row, d);
    workOutNeck(row, d);
    workOutArmhole(row, d);
    workOutBody(row, d);
    if (d.silhouette !== 'vest') workOutSleeve(row, d);
    workOutWearing(row, d);
    return row.v;
  }
}
