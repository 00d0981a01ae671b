import type { TargetSheet } from '#target-sheet';
import type { DesignNotes, Notebook } from './notebook.ts';

/** A kept sheet. It does not change when its inputs do. */
export interface KeptSheet {
  readonly key: string;
  readonly title: string;
  /** RFC 3339. */
  readonly createdAt: string;
  /** In mm; null while only the server has it. */
  readonly sheet: TargetSheet | null;
  /** The choices it was made with, to restore them; null for a sheet that was made elsewhere. */
  readonly chosen: { readonly design: DesignNotes; readonly made: Notebook['made'] } | null;
  /** Its id in the API. */
  readonly stored: string | null;
  /** The fingerprint of its inputs, while it waits to be stored. */
  readonly waiting: string | null;
  /** The inputs that changed since, by the API's names. */
  readonly changed: readonly string[];
}

/** The sheets, and the ids of those that are still to be deleted through the API. */
export interface KeptSheets {
  readonly sheets: readonly KeptSheet[];
  readonly removed: readonly string[];
}
