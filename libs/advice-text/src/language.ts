/** The languages that have a catalogue. A new one is a word here and a folder like `en`; the compiler then asks for each of its sentences. */
export type Language = 'en';
