import { resolveBody, type BodyProfile, type Estimator } from '#body';
import { resolveFabric, type Fabric } from '#fabric';
import type { Tape } from '#advice-text';
import { BODY_MEASURES, RULES_VERSION, advise, rulesWith } from '#fit';
import { resolveGarment } from '#garment';
import { DomainError } from '#measure';
import { inUnit } from './in-unit.ts';
import { MAX_TITLE } from './schema/target-sheet-schema.ts';
import { sheetError } from './sheet-error.ts';
import type { SheetInput } from './sheet-input.ts';
import { sheetYarn } from './sheet-yarn.ts';
import { sheetNotes } from './sheet-notes.ts';
import { FORMAT, VERSION, type TargetSheet } from './target-sheet.ts';
import { withText } from './with-text.ts';

interface ComposeOptions {
  readonly estimator?: Estimator;
  readonly profile?: BodyProfile | null;
  readonly tape?: Tape;
}

/**
 * Makes a target sheet: what the maker knows in, the finished measurements out, in the unit she asked for. `createdAt`
 * is RFC 3339 in UTC. `estimator` fills in what was not measured of an adult, where the body allows it; `profile` is the
 * input's body where it was resolved already. `tape` is what lengths in texts are told in, else that of the sheet's unit.
 *
 * @throws DomainError of the body, garment, fabric, rules and design given, with a JSON Pointer into the input;
 * `title-too-long` above 200 characters.
 */
export function composeSheet(
  input: SheetInput,
  meta: { readonly id: string; readonly createdAt: string },
  { estimator, profile, tape = tapeOf(input.unit) }: ComposeOptions = {},
): TargetSheet {
  const { title, design, made, unit } = input;
  if ([...title].length > MAX_TITLE) throw sheetError('title-too-long', { longest: MAX_TITLE }, '/title');
  const fabric = at('/fabric', () => resolveFabric(input.fabric));
  const body = profile ?? at('/body', () => bodyOf(input.body, estimator));
  const garment = at('/garment', () => input.garment && resolveGarment(input.garment));
  const rules = at('/rules', () => rulesWith(input.rules));
  const advice = withText(advise({ body, garment, fabric, design, made, rules }), { tape });
  const yarn = sheetYarn(advice.pieces, input.fabric, fabric, { tape });
  const sheet: TargetSheet = {
    format: FORMAT,
    version: VERSION,
    id: meta.id,
    createdAt: meta.createdAt,
    title,
    unit: 'mm',
    craft: fabric.craft,
    stitch: input.fabric.stitch,
    rulesVersion: RULES_VERSION,
    design: advice.design,
    fabric: fabricOf(fabric),
    ...(yarn && { yarn }),
    assembled: advice.assembled,
    pieces: advice.pieces,
    checks: advice.checks,
    collisions: advice.collisions,
    cautions: advice.cautions,
    notes: sheetNotes(body, fabric, advice.notes, { tape }),
  };
  return inUnit(sheet, unit);
}

/** A tape is marked in inches or in centimetres. */
const tapeOf = (unit: SheetInput['unit']): Tape => (unit === 'in' ? 'in' : 'cm');

const bodyOf = (body: SheetInput['body'], estimator: Estimator | undefined): BodyProfile | null =>
  body && resolveBody(body, { estimate: body.estimate, wanted: BODY_MEASURES, ...(estimator && { estimator }) });

const fabricOf = ({ thicknessMm, thicknessU, from, stretch, growth }: Fabric): TargetSheet['fabric'] => ({
  thickness: thicknessMm,
  u: thicknessU,
  from,
  stretch,
  growth,
});

/** What it answers; a DomainError's pointer is seen from the whole input. */
function at<T>(place: string, answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    throw error instanceof DomainError ? error.under(place) : error;
  }
}
