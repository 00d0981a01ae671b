/** The languages that have a catalogue. A new one is a word here and a file; the compiler then asks for each of its sentences. */
const LANGUAGES = ['en'] as const;
export type Language = (typeof LANGUAGES)[number];
