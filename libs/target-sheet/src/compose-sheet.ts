import type { BodyModel } from '#body';
import type { Fabric } from '#fabric';
import type { Tape } from '#advice-text';
import { RULES_VERSION, advise, evidenceNotes, type AdviceNote, type Favourites, type ResolvedWearer } from '#fit';
import { decidedRequest } from './fit-request.ts';
import { inUnit } from './in-unit.ts';
import { MAX_TITLE } from './schema/target-sheet-schema.ts';
import { sheetError } from './sheet-error.ts';
import type { SheetInput } from './sheet-input.ts';
import { sheetYarn } from './sheet-yarn.ts';
import { sheetNotes } from './sheet-notes.ts';
import { FORMAT, VERSION, type TargetSheet } from './target-sheet.ts';
import { wearerOf } from './wearer.ts';
import { withText } from './with-text.ts';

interface ComposeOptions {
  readonly model?: BodyModel | null;
  readonly wearer?: ResolvedWearer;
  readonly tape?: Tape;
}

/**
 * Makes a target sheet: what the maker knows in, the finished measurements out, in the unit she asked for. `createdAt`
 * is RFC 3339 in UTC. `model` fills in what was not measured of an adult, where the body allows it; `wearer` is the input's
 * where she was resolved already. `tape` is what lengths in texts are told in, else that of the sheet's unit.
 *
 * @throws DomainError of the body, garment, fabric, rules and design given, with a JSON Pointer into the input;
 * `title-too-long` above 200 characters.
 */
export function composeSheet(
  input: SheetInput,
  meta: { readonly id: string; readonly createdAt: string },
  { model = null, wearer = wearerOf(input, model), tape = tapeOf(input.unit) }: ComposeOptions = {},
): TargetSheet {
  const { title, unit } = input;
  if ([...title].length > MAX_TITLE) throw sheetError('title-too-long', { longest: MAX_TITLE }, '/title');
  const { request, favourites } = decidedRequest(input, wearer);
  const { body, fabric } = request;
  const asked = [...evidenceNotes(wearer), ...favouritesNote(favourites)];
  const { notes, ...rest } = advise(request);
  const advice = withText({ ...rest, notes: [...notes, ...asked] }, { tape });
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

const favouritesNote = (favourites: Favourites | null): readonly AdviceNote[] =>
  favourites === null
    ? []
    : [
        {
          code: 'ease-of-favourites',
          params: { count: favourites.count, meanMm: favourites.mean, sdMm: favourites.sd },
        },
      ];

const fabricOf = ({ thicknessMm, thicknessU, from, stretch, growth }: Fabric): TargetSheet['fabric'] => ({
  thickness: thicknessMm,
  u: thicknessU,
  from,
  stretch,
  growth,
});
