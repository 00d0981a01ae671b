import { MM_PER_UNIT, type LengthUnit } from './length-unit.ts';
import { roundTo } from './round-to.ts';

/** Marks on a tape: an inch has eighths, a centimetre halves. */
const EIGHTHS = 8;
const CM_STEP_MM = 5;

/** Inches to the nearest ⅛ without their unit: `17 1/2`, `1/8`, `0`, `-2`. */
export function inchesText(mm: number): string {
  const eighths = roundTo((mm / MM_PER_UNIT['[in_i]']) * EIGHTHS, 1);
  const whole = Math.floor(Math.abs(eighths) / EIGHTHS);
  const rest = Math.abs(eighths) % EIGHTHS;
  const common = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const fraction = rest === 0 ? '' : `${rest / common}/${EIGHTHS / common}`;
  const words = [whole === 0 && rest > 0 ? '' : String(whole), fraction].filter((word) => word !== '');
  return (eighths < 0 ? '-' : '') + words.join(' ');
}

/** A length for people, as a tape reads: inches to the nearest ⅛ (`17 1/2 in`), cm to the nearest half (`44.5 cm`), mm whole (`445 mm`). */
export function formatLength(
  mm: number,
  unit: LengthUnit,
  options: { readonly decimalSeparator?: '.' | ',' | undefined } = {},
): string {
  switch (unit) {
    case '[in_i]':
      return `${inchesText(mm)} in`;
    case 'cm':
      return `${String(roundTo(mm, CM_STEP_MM) / MM_PER_UNIT.cm).replace('.', options.decimalSeparator ?? '.')} cm`;
    case 'mm':
      return `${roundTo(mm, 1)} mm`;
  }
}
