/** Something to say on the sheet: a stable code, the text, and where it is from. */
export interface Note {
  readonly code: string;
  readonly text: string;
  readonly source?: string;
}
