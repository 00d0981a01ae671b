import type { QuantityFault } from './quantity-fault.ts';

/** 17, 17.5, 44,5, .5: digits with at most one decimal sign. */
const DECIMAL = /^(?:\d+[.,]?\d*|[.,]\d+)$/;
/** 1,234: a thousand to one maker, one and a bit to another. 0,125 is neither. */
const THOUSANDS_OR_DECIMAL = /^[1-9]\d{0,2},\d{3}$/;
/** 1/2, 17 1/2, 17-1/2. */
const FRACTION = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/;

/** What a number's text says, or why it cannot be taken as one number. */
type Amount =
  | { readonly value: number; readonly whole: boolean }
  | { readonly problem: 'ambiguous' | 'unreadable'; readonly fault: QuantityFault };

/** Reads one number out of tidied text (see `tidyText`): whole, decimal with a point or a comma, fraction, or both. */
export function readAmount(text: string): Amount {
  if (THOUSANDS_OR_DECIMAL.test(text)) {
    const plain = text.replace(',', '');
    const decimal = text.replace(',', '.');
    return ambiguous({ code: 'comma-ambiguous', params: { plain, decimal } });
  }
  if (DECIMAL.test(text)) return { value: Number(text.replace(',', '.')), whole: /^\d+$/.test(text) };
  const fraction = FRACTION.exec(text);
  if (fraction !== null) return readFraction(fraction[1], fraction[2] ?? '', fraction[3] ?? '');
  if (!/\d/.test(text)) return unreadable({ code: 'no-number', params: {} });
  return ambiguous({ code: 'several-numbers', params: {} });
}

function readFraction(whole: string | undefined, numerator: string, denominator: string): Amount {
  const [top, bottom] = [Number(numerator), Number(denominator)];
  if (bottom === 0) return unreadable({ code: 'divided-by-zero', params: { numerator } });
  if (top >= bottom) {
    const missingSpace = whole === undefined && numerator.length > 1;
    const example = missingSpace ? `${numerator.slice(0, -1)} ${numerator.slice(-1)}/${denominator}` : '17 1/2';
    return ambiguous({ code: 'improper-fraction', params: { fraction: `${numerator}/${denominator}`, example } });
  }
  return { value: Number(whole ?? 0) + top / bottom, whole: false };
}

const ambiguous = (fault: QuantityFault): Amount => ({ problem: 'ambiguous', fault });
const unreadable = (fault: QuantityFault): Amount => ({ problem: 'unreadable', fault });
