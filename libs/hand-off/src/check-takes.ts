import { MM_PER_SHEET_UNIT } from '#target-sheet';
import { FORMATS } from './formats/index.ts';
import { escapeToken } from './json-pointer.ts';
import { parseOurName } from './our-name.ts';
import type { PlannerTakes, TakesFault } from './planner-takes.ts';

/** The coarsest step anybody rounds a sweater to: ten centimetres. */
const COARSEST_STEP_MM = 100;
/** The finest that is not the same as none: a hundredth of a millimetre. */
const FINEST_STEP_MM = 0.01;

/** Everything that is wrong with what a planner is said to take, each with its place; empty when a sheet can be mapped. */
export function checkTakes(takes: PlannerTakes): TakesFault[] {
  return [...stepFaults(takes), ...ourNameFaults(takes), ...theirNameFaults(takes), ...requiredFaults(takes)];
}

const fault = (code: string, pointer: string, message: string): TakesFault => ({ code, pointer, message });
const atName = (ourName: string): string => `/names/${escapeToken(ourName)}`;

function stepFaults({ roundingStep: step, unit, format }: PlannerTakes): TakesFault[] {
  if (step === null) return [];
  if (!FORMATS[format].rounds) {
    const why = 'A sheet goes unrounded and says how far each length may be rounded: leave the rounding step out.';
    return [fault('rounding-a-sheet', '/roundingStep', why)];
  }
  const mm = step * MM_PER_SHEET_UNIT[unit];
  if (mm >= FINEST_STEP_MM && mm <= COARSEST_STEP_MM) return [];
  const [least, most] = [FINEST_STEP_MM, COARSEST_STEP_MM].map((limit) =>
    Number((limit / MM_PER_SHEET_UNIT[unit]).toPrecision(2)),
  );
  return [
    fault(
      'rounding-step',
      '/roundingStep',
      `${step} ${unit} is no step to round to: ${least} to ${most} ${unit}, or none.`,
    ),
  ];
}

function ourNameFaults({ names, required }: PlannerTakes): TakesFault[] {
  const message = (name: string) =>
    `"${name}" is none of the sheet's names: write place/dimension, such as assembled/chest-width or sleeve/sleeve-length.`;
  const mapped = Object.keys(names).map((name) => ({ name, pointer: atName(name) }));
  const wanted = required.map((name, index) => ({ name, pointer: `/required/${index}` }));
  return [...mapped, ...wanted]
    .filter(({ name }) => parseOurName(name) === null)
    .map(({ name, pointer }) => fault('unknown-name', pointer, message(name)));
}

const theirNameFaults = ({ names, format }: PlannerTakes): TakesFault[] =>
  FORMATS[format]
    .nameFaults(names)
    .map(({ code, ourName, message }) => fault(code, ourName === null ? '/names' : atName(ourName), message));

function requiredFaults({ names, required }: PlannerTakes): TakesFault[] {
  if (Object.keys(names).length === 0) return [];
  return required.flatMap((name, index) =>
    Object.hasOwn(names, name)
      ? []
      : [
          fault(
            'required-not-named',
            `/required/${index}`,
            `${name} is required but has no name on the planner's side.`,
          ),
        ],
  );
}
