/** A text for each of the names: one that lacks its text does not compile, here and nowhere else. */
export const wordsFor = <Name extends string, Text = string>(
  words: Readonly<Record<Name, Text>>,
): Readonly<Record<Name, Text>> => words;
