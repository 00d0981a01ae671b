import type { TargetSheet } from '#target-sheet';
import type { DesignNotes, Notebook } from './notebook.ts';

/** A sheet she kept. It does not change when what it was made from does. */
export interface KeptSheet {
  readonly key: string;
  readonly title: string;
  /** RFC 3339. */
  readonly createdAt: string;
  /** In mm; null while only the store has it. */
  readonly sheet: TargetSheet | null;
  /** What was chosen, to take it up again; null for a sheet that came from elsewhere. */
  readonly chosen: { readonly design: DesignNotes; readonly made: Notebook['made'] } | null;
  /** Its id at the store. */
  readonly stored: string | null;
  /** What it was made from, as text, while it waits to be stored. */
  readonly waiting: string | null;
  /** What it was made from and is another now, in the store's words. */
  readonly changed: readonly string[];
}

/** The sheets, and those removed here that are still to be removed from the store. */
export interface KeptSheets {
  readonly sheets: readonly KeptSheet[];
  readonly removed: readonly string[];
}
