import { OPENING_PLACES } from '#fit';
import { GRAMS_PER_UNIT, MM_PER_UNIT } from '#measure';
import type { DesignLength, DesignNotes } from '../notebook/notebook.ts';
import { empty } from '../notebook/blank.ts';
import type { Tape, Typed } from '../notebook/typed.ts';

const LENGTH_OF: Readonly<Record<string, DesignLength>> = {
  customLengthMm: 'customLength',
  bandMm: 'band',
  frontBandMm: 'frontBand',
  overlapMm: 'overlap',
  ribMm: 'rib',
  cuffWidthMm: 'cuffWidth',
  neckWidthMm: 'neckWidth',
  frontNeckDepthMm: 'frontNeckDepth',
  backNeckDepthMm: 'backNeckDepth',
  seamAllowanceMm: 'seamAllowance',
};
const CHOICES = ['silhouette', 'construction', 'neckline', 'length', 'hem', 'basis'] as const;
const RULE = 'rules/';

/** Applies a remedy of a check to the design: lengths come in mm, choices by name, rules as `rules/<name>`. */
export function applyRemedy(
  notes: DesignNotes,
  change: Readonly<Record<string, number | string>>,
  tape: Tape,
): DesignNotes {
  return Object.entries(change).reduce((it, [field, to]) => applied(it, field, to, tape), notes);
}

function applied(notes: DesignNotes, field: string, to: number | string, tape: Tape): DesignNotes {
  if (typeof to === 'string') return chosen(notes, field, to, tape);
  if (field.startsWith(RULE)) return { ...notes, rules: { ...notes.rules, [field.slice(RULE.length)]: to } };
  if (field === 'easeMm') return { ...notes, ease: 'own', ownEase: lengthText(to, tape) };
  if (field === 'easeChangeMm') return { ...notes, ease: 'garment', change: lengthText(to, tape) };
  const length = LENGTH_OF[field];
  return length === undefined ? notes : { ...notes, lengths: { ...notes.lengths, [length]: lengthText(to, tape) } };
}

/** A neck that is to open elsewhere opens as far as the head needs. */
function chosen(notes: DesignNotes, field: string, to: string, tape: Tape): DesignNotes {
  const at = OPENING_PLACES.find((place) => place === to);
  if (field === 'opening' && at !== undefined) return { ...notes, opening: { at, length: empty(tape) } };
  return CHOICES.some((choice) => choice === field) ? { ...notes, [field]: to } : notes;
}

/** A length as text for a field, exact to a tenth of a millimetre. */
export function lengthText(mm: number, tape: Tape): Typed {
  const text = tape === 'cm' ? (mm / MM_PER_UNIT.cm).toFixed(2) : (mm / MM_PER_UNIT['[in_i]']).toFixed(3);
  return { text: String(Number(text)), tape };
}

/** A weight as text for a field. */
export function massText(grams: number, tape: Tape): Typed {
  const text = (grams / GRAMS_PER_UNIT[tape === 'cm' ? 'kg' : '[lb_av]']).toFixed(1);
  return { text: String(Number(text)), tape };
}
