/** A value that a sentence is filled with. A number whose name ends in `Mm` is a length in mm, whatever the sheet's unit. */
export type Param = string | number | boolean | null | readonly Param[] | { readonly [name: string]: Param };
export type Params = Readonly<Record<string, Param>>;

/** Something to say, as data: a stable code and the values of its sentence. The words stand in `advice-text`, a catalogue for each language. */
export type Message<Code extends string = string, P = Params> = {
  readonly code: Code;
  readonly params: P;
};

/** All the messages of a lib, from the map of its codes to their parameters. */
export type MessageOf<Codes> = { [Code in keyof Codes & string]: Message<Code, Codes[Code]> }[keyof Codes & string];

/** Of a sentence that needs no values. */
export type NoParams = Readonly<Record<never, never>>;
