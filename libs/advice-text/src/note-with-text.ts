import type { Source } from '#fit';
import type { Message, Params } from '#measure';
import type { Reader } from './catalogue.ts';
import type { Language } from './language.ts';
import { text } from './text.ts';

/** A note with its text and its source's beside the code. */
export interface NoteWithText {
  readonly code: string;
  readonly params: Params;
  readonly text: string;
  readonly source?: string;
}

type NoteKind = 'bodyNote' | 'fabricNote' | 'note' | 'caution';

/** Adds the text of a note, and that of its source where it has one. */
export function noteWithText(
  kind: NoteKind,
  note: Message<string, object> & { readonly source?: Source },
  reader: Reader,
  language?: Language,
): NoteWithText {
  const { code, params, source } = note;
  return {
    code,
    params: params as Params,
    text: text(kind, note as Parameters<typeof text>[1], reader, language),
    ...(source && { source: text('source', source, reader, language) }),
  };
}
