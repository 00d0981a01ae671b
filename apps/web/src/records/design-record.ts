import type { components } from '../api.generated.ts';
import { blankDesign, empty } from '../notebook/blank.ts';
import { DESIGN_LENGTHS, type DesignLength, type DesignNotes, type Notebook } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { toDesign } from '../compute/to-design.ts';
import { fromLayerRecord, toLayerRecord } from './garment-record.ts';
import { fromMeasured, toLength } from './measured.ts';

type Schemas = components['schemas'];
type DesignDto = Schemas['DesignDto'];

export function toDesignRecord(notes: DesignNotes): DesignDto {
  const { ease, length } = toDesign(notes);
  const lengths = DESIGN_LENGTHS.flatMap((name) => {
    const measured = name === 'customLength' && length !== 'custom' ? null : toLength(notes.lengths[name], 'length');
    return measured === null ? [] : [[name, measured]];
  });
  return {
    silhouette: notes.silhouette,
    construction: notes.construction,
    neckline: notes.neckline,
    length,
    hem: notes.hem,
    basis: notes.basis,
    ease: 'mm' in ease ? { value: ease.mm, unit: 'mm' } : ease,
    easeChange: toLength(notes.easeChange, 'signed'),
    layer: toLayerRecord(notes.layer),
    ...(Object.fromEntries(lengths) as Pick<DesignDto, DesignLength>),
  };
}

export function fromDesignRecord(record: DesignDto, title: string, tape: Tape): DesignNotes {
  const { ease } = record;
  const own = ease?.value == null && ease?.text == null ? null : ease;
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
    hem: record.hem ?? 'straight',
    basis: record.basis ?? 'body',
    ease: own === null ? (ease?.category ?? 'classic') : 'own',
    place: ease?.place ?? 0.5,
    ownEase: own === null ? empty(tape) : fromMeasured(own, 'signed'),
    easeChange: fromMeasured(record.easeChange, 'signed'),
    layer: fromLayerRecord(record.layer),
    lengths: Object.fromEntries(lengths),
  };
}

export function toMadeRecord(made: Notebook['made']): Schemas['MadePieceDto'][] {
  return Object.entries(made).flatMap(([key, typed]) => {
    const [piece, name] = key.split('/') as [Schemas['MadePieceDto']['piece'], Schemas['MadePieceDto']['name']];
    const measured = toLength(typed, 'length');
    return measured === null ? [] : [{ piece, name, ...measured }];
  });
}
