/** Widest line of a printed sheet, in characters. */
const LINE_WIDTH = 80;

/** Control and direction characters, which a terminal would obey. */
const OBEYED = /[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]+/gu;

/** Between a number and its unit no line breaks. */
const UNIT = /(?<=\d) (?=(?:%|mm|cm|in|g)(?!\w))/g;
const UNBROKEN = '\u00a0';

/** Text with nothing in it but characters and single spaces. */
const plain = (text: string): string => text.replace(OBEYED, ' ').replace(/ +/g, ' ').trim();

export const widthOf = (text: string): number => [...text].length;

/**
 * Text in lines of at most 80 characters, broken at spaces; a word that is longer is cut. The first line starts with
 * `lead`, the others with `indent`, as wide or wider (by default spaces, as wide).
 */
export function wrap(text: string, lead = '', indent = ' '.repeat(widthOf(lead))): string[] {
  const room = LINE_WIDTH - widthOf(indent);
  const lines: string[] = [];
  let line = '';
  for (const word of plain(text)
    .replace(UNIT, UNBROKEN)
    .split(' ')
    .flatMap((each) => pieces(each, room))) {
    if (line === '') line = word;
    else if (widthOf(line) + 1 + widthOf(word) <= room) line += ` ${word}`;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((each, index) =>
    ((index === 0 ? lead : indent) + each.replaceAll(UNBROKEN, ' ')).trimEnd(),
  );
}

/** A word cut into pieces of at most `room` characters. */
function pieces(word: string, room: number): string[] {
  const characters = [...word];
  if (characters.length <= room) return [word];
  return Array.from({ length: Math.ceil(characters.length / room) }, (_, index) =>
    characters.slice(index * room, (index + 1) * room).join(''),
  );
}

/** Heading of a part of the sheet, with an empty line before it. */
export const heading = (text: string): string[] => ['', ...wrap(text.toUpperCase())];

/** A name of ours in words: `head-through-neck` is "head through neck". */
export const inWords = (name: string): string => name.replaceAll('-', ' ');
