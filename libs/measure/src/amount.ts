/** 17, 17.5, 44,5, .5: digits with at most one decimal sign. */
const DECIMAL = /^(?:\d+[.,]?\d*|[.,]\d+)$/;
/** 1,234: a thousand to one maker, one and a bit to another. 0,125 is neither. */
const THOUSANDS_OR_DECIMAL = /^[1-9]\d{0,2},\d{3}$/;
/** 1/2, 17 1/2, 17-1/2. */
const FRACTION = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/;

/** What a number's text says, or why it cannot be taken as one number. */
export type Amount =
  | { readonly value: number; readonly whole: boolean }
  | { readonly problem: 'ambiguous' | 'unreadable'; readonly why: string };

/** Reads one number out of tidied text (see `tidyText`): whole, decimal with a point or a comma, fraction, or both. */
export function readAmount(text: string): Amount {
  if (THOUSANDS_OR_DECIMAL.test(text)) {
    const plain = text.replace(',', '');
    const decimal = text.replace(',', '.');
    return ambiguous(`it may be ${plain} or ${decimal}; write the one you mean`);
  }
  if (DECIMAL.test(text)) return { value: Number(text.replace(',', '.')), whole: /^\d+$/.test(text) };
  const fraction = FRACTION.exec(text);
  if (fraction !== null) return readFraction(fraction[1], fraction[2] ?? '', fraction[3] ?? '');
  if (!/\d/.test(text)) return { problem: 'unreadable', why: 'there is no number in it' };
  return ambiguous('it is more than one number; write one, such as 17 1/2 or 17.5');
}

function readFraction(whole: string | undefined, over: string, under: string): Amount {
  const [top, bottom] = [Number(over), Number(under)];
  if (bottom === 0) return { problem: 'unreadable', why: `nothing can be divided into 0 parts, as ${over}/0 says` };
  if (top >= bottom) {
    const missingSpace = whole === undefined && over.length > 1;
    const meant = missingSpace ? `${over.slice(0, -1)} ${over.slice(-1)}/${under}` : `17 1/2`;
    return ambiguous(
      `${over}/${under} is not a part of one; write a whole number, a space and a fraction, such as ${meant}`,
    );
  }
  return { value: Number(whole ?? 0) + top / bottom, whole: false };
}

function ambiguous(why: string): Amount {
  return { problem: 'ambiguous', why };
}
