import type { Contradiction } from '#body';
import type { GarmentDimension } from '#garment';
import type { MessageOf } from '#measure';
import type { NoteCodes } from '../messages/note-codes.ts';
import type { ResolvedWearer } from './resolve-wearer.ts';

type EvidenceNote = MessageOf<Pick<NoteCodes, 'garment-beside-tape' | 'garments-apart'>>;

/** What has to be asked where the garments that fit contradict the tape, or one another. */
export const evidenceNotes = ({ contradictions }: ResolvedWearer): readonly EvidenceNote[] =>
  contradictions.map(noteOf);

function noteOf(contradiction: Contradiction): EvidenceNote {
  if (contradiction.between === 'sources') {
    const { id, sources, difference, u } = contradiction;
    const params = { measure: id as GarmentDimension, garments: sources, moreMm: difference, uMm: u };
    return { code: 'garments-apart', params };
  }
  const { source, id, difference, u } = contradiction.observation;
  const params = { garment: source, measure: id as GarmentDimension, moreMm: difference, uMm: u };
  return { code: 'garment-beside-tape', params };
}
