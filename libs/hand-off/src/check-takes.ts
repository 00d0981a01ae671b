import type { DomainError } from '#measure';
import { MM_PER_SHEET_UNIT } from '#target-sheet';
import { FORMATS } from './formats/index.ts';
import { atName } from './their-name-error.ts';
import { parseOurName } from './our-name.ts';
import { plannerError } from './planner-error.ts';
import type { PlannerTakes } from './planner-takes.ts';

/** The coarsest step anybody rounds a sweater to: ten centimetres. */
const COARSEST_STEP_MM = 100;
/** The finest that is not the same as none: a hundredth of a millimetre. */
const FINEST_STEP_MM = 0.01;

/** Everything that is wrong with what a planner is said to take, each with its place; empty when a sheet can be mapped. */
export function checkTakes(takes: PlannerTakes): DomainError[] {
  return [...stepFaults(takes), ...ourNameFaults(takes), ...theirNameFaults(takes), ...requiredFaults(takes)];
}

function stepFaults({ roundingStep: step, unit, format }: PlannerTakes): DomainError[] {
  if (step === null) return [];
  if (!FORMATS[format].rounds) return [plannerError('rounding-a-sheet', {}, '/roundingStep')];
  const mm = step * MM_PER_SHEET_UNIT[unit];
  if (mm >= FINEST_STEP_MM && mm <= COARSEST_STEP_MM) return [];
  const inUnit = (limit: number): number => Number((limit / MM_PER_SHEET_UNIT[unit]).toPrecision(2));
  const [least, most] = [inUnit(FINEST_STEP_MM), inUnit(COARSEST_STEP_MM)];
  return [plannerError('rounding-step', { step, least, most, unit }, '/roundingStep')];
}

function ourNameFaults({ names, required }: PlannerTakes): DomainError[] {
  const mapped = Object.keys(names).map((name) => ({ name, pointer: atName(name) }));
  const wanted = required.map((name, index) => ({ name, pointer: `/required/${index}` }));
  return [...mapped, ...wanted]
    .filter(({ name }) => parseOurName(name) === null)
    .map(({ name, pointer }) => plannerError('unknown-name', { name }, pointer));
}

const theirNameFaults = ({ names, format }: PlannerTakes): readonly DomainError[] => FORMATS[format].nameFaults(names);

function requiredFaults({ names, required }: PlannerTakes): DomainError[] {
  if (Object.keys(names).length === 0) return [];
  return required.flatMap((name, index) =>
    Object.hasOwn(names, name) ? [] : [plannerError('required-not-named', { name }, `/required/${index}`)],
  );
}
