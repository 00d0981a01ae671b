import { DESIGN_RECORD, type DesignRecord, type StoredDesign } from '#fit';
import { storedRecord } from '#measure';
import type { components } from '../api.generated.ts';
import { blankDesign } from '../notebook/blank.ts';
import { DESIGN_LENGTHS, type DesignLength, type DesignNotes, type Notebook } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { carrying, type Carry } from './carrying.ts';
import { fromLayerRecord, toLayerRecord } from './garment-record.ts';
import { fromMeasured, toMeasured, toSize } from './measured.ts';
import { valueIn } from './read.ts';

type Field<K extends keyof DesignRecord> = Exclude<DesignRecord[K], undefined>;
type MadePieceDto = components['schemas']['MadePieceDto'];

/** Classic ease, where her own number cannot be read yet. */
const MEANWHILE = { category: 'classic', place: 0.5 } as const;

export function toDesignRecord(notes: DesignNotes): DesignRecord {
  const carry = carrying<DesignNotes, StoredDesign>(notes, fromStored(notes.ownEase.tape));
  const written = (name: DesignLength) => (belongs(name, notes) ? toMeasured(notes.lengths[name], 'length') : null);
  const lengths = DESIGN_LENGTHS.flatMap((name): [DesignLength, Field<DesignLength>][] => {
    const length = carry<Field<DesignLength>>(
      (it) => [it.lengths[name], belongs(name, it)],
      (record) => record[name],
      () => written(name),
    );
    return length === null && notes.record === undefined ? [] : [[name, length]];
  });
  return {
    ...notes.record,
    silhouette: notes.silhouette,
    construction: notes.construction,
    neckline: notes.neckline,
    // A length of her own that is not written yet is the regular one meanwhile.
    length:
      notes.length === 'custom' && !lengths.some(([name, length]) => name === 'customLength' && length !== null)
        ? 'regular'
        : notes.length,
    hem: notes.hem,
    basis: notes.basis,
    ease: carry<Field<'ease'>>(
      ({ ease, place, ownEase, change }) => [ease, place, ownEase, change.text],
      ({ ease }) => ease,
      () => writtenEase(notes),
    ),
    layer: toLayerRecord(notes, carry),
    ...openingPart(notes, carry),
    ...(Object.fromEntries(lengths) as Pick<DesignRecord, DesignLength>),
  };
}

/** A length of her own counts while it is chosen. */
const belongs = (name: DesignLength, { length }: DesignNotes): boolean =>
  name !== 'customLength' || length === 'custom';

/** The opening of the neck. A cardigan is open in front, and has no choice of it. */
function openingPart(notes: DesignNotes, carry: Carry<DesignNotes, StoredDesign>): Pick<DesignRecord, 'opening'> {
  const opening = carry<Field<'opening'>>(
    (it) => [it.opening, it.silhouette === 'cardigan'],
    (record) => record.opening,
    () => writtenOpening(notes),
  );
  return opening === null && notes.record === undefined ? {} : { opening };
}

function writtenOpening({ opening: { at, length }, silhouette }: DesignNotes): Field<'opening'> {
  if (at === null || silhouette === 'cardigan') return null;
  return { at, length: at === 'none' ? null : toSize(length, 'length') };
}

function writtenEase({ ease, place, ownEase, change }: DesignNotes): Field<'ease'> {
  if (ease === null) return null;
  if (ease === 'garment') return { as: ease, change: toSize(change, 'signed') };
  if (ease === 'favourites') return { as: ease };
  if (ease !== 'own') return { category: ease, place };
  const value = valueIn(ownEase, 'signed');
  return value === null ? MEANWHILE : { value, unit: 'mm' };
}

const fromStored =
  (tape: Tape) =>
  (record: StoredDesign): DesignNotes =>
    fromDesignRecord(record, '', tape);

export function fromDesignRecord(given: DesignRecord, title: string, tape: Tape): DesignNotes {
  const record = storedRecord(DESIGN_RECORD, given);
  const { ease } = record;
  const lengths = DESIGN_LENGTHS.flatMap((name): [DesignLength, Typed][] => {
    const typed = fromMeasured(record[name], 'length');
    return typed.text === '' ? [] : [[name, typed]];
  });
  return {
    ...blankDesign(tape),
    title,
    silhouette: record.silhouette,
    construction: record.construction,
    neckline: record.neckline,
    length: record.length,
    hem: record.hem,
    basis: record.basis,
    ...easePart(ease),
    layer: fromLayerRecord(record.layer),
    opening: { at: record.opening?.at ?? null, length: fromMeasured(record.opening?.length, 'length') },
    lengths: Object.fromEntries(lengths),
    record,
  };
}

function easePart(ease: StoredDesign['ease']): Partial<DesignNotes> {
  if (ease === null) return {};
  if ('as' in ease) return { ease: ease.as, change: fromMeasured(ease.change, 'signed') };
  if ('category' in ease) return { ease: ease.category, place: ease.place };
  return { ease: 'own', ownEase: fromMeasured(ease, 'signed') };
}

export function toMadeRecord(made: Notebook['made']): MadePieceDto[] {
  return Object.entries(made).flatMap(([key, typed]) => {
    const [piece, name] = key.split('/') as [MadePieceDto['piece'], MadePieceDto['name']];
    const size = toSize(typed, 'length');
    return size === null ? [] : [{ piece, name, ...size }];
  });
}
