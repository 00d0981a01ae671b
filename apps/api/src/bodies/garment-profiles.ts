import { text } from '#advice-text';
import type { BodyProfile } from '#body';
import { easeOfGarments, evidenceNotes, garmentNames, type ResolvedWearer, type Rules } from '#fit';
import type { Garment } from '#garment';
import { normalQuantile } from '#measure';
import { garmentBesideBody } from '#target-sheet';
import type { ContradictionDto, GarmentQuestionDto, SweaterDto } from './profile.dto.ts';

/** Half the width of a 90 % interval, in standard uncertainties. */
const HALF_WIDTH_90 = normalQuantile(0.95);

const READER = { tape: 'cm' } as const;

/** What looks like a slip in each garment. */
export const garmentQuestionsOf = (garments: readonly Garment[], body: BodyProfile): GarmentQuestionDto[] =>
  garments.flatMap((garment, place) =>
    garmentBesideBody(garment, body).map((question) => {
      const { name, code, params, wouldBe } = question;
      return { garment: place, name, code, params, text: text('garmentQuestion', question, READER), wouldBe };
    }),
  );

/** What has to be asked where garments contradict the tape, or one another. */
export function contradictionsOf(wearer: ResolvedWearer): ContradictionDto[] {
  const names = garmentNames(wearer.garments);
  const notes = evidenceNotes(wearer);
  return wearer.contradictions.map((one, index) => {
    const note = notes[index]!;
    const { id, difference, u } = one.between === 'tape' ? one.observation : one;
    const sources = one.between === 'tape' ? [one.observation.source] : one.sources;
    const garments = sources.map((source) => names.indexOf(source));
    const { code, params } = note;
    return { garments, name: id, difference, u, code, params, text: text('note', note, READER) };
  });
}

/** The ease of each garment, and where it lies among the bands. */
export function sweatersOf(wearer: ResolvedWearer, rules: Rules): SweaterDto[] {
  const eases = easeOfGarments(wearer, rules);
  return wearer.garments.map(({ title }, garment) => {
    const { value, u, lies } = eases[garment]!;
    const range = { low: value - HALF_WIDTH_90 * u, high: value + HALF_WIDTH_90 * u };
    const words = { code: lies.code, params: lies.params, text: text('ease', lies, READER) };
    return { garment, title, ease: { value, u, ...range }, lies: words };
  });
}
