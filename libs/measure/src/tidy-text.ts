/** The spaces, dashes and quote marks that keyboards and phones put in, each as the plain character it stands for. */
const PLAIN: readonly (readonly [RegExp, string])[] = [
  [/\s+/g, ' '],
  [/[\u200B\u2060\uFEFF]/g, ''],
  [/[\u2010-\u2015\u2212]/g, '-'],
  [/[\u2044\u2215]/g, '/'],
  [/[\u2018\u2019\u2032\u00B4`]/g, "'"],
  [/[\u201C-\u201E\u2033]/g, '"'],
  [/''/g, '"'],
];

/** ¼ ½ ¾, the thirds to tenths, and the eighths. */
const FRACTION_SIGN = /[\u00BC-\u00BE\u2150-\u215E]/g;
/** Letters and digits of double width, and the signs for mm and cm in one character. */
const WIDE_SIGN = /[\uFF01-\uFF5E\u339C\u339D]/g;

/**
 * A measurement as typed, in plain lower-case characters: `17½″` becomes `17 1/2"`. Only the spelling changes, never a
 * number. A superscript or a circled digit is left as it is, so that `17²` is not taken for 172.
 */
export function tidyText(text: string): string {
  const spelled = text
    .replace(WIDE_SIGN, (sign) => sign.normalize('NFKC'))
    .replace(FRACTION_SIGN, (sign, at: number, whole: string) => {
      const afterDigit = /\d/.test(whole.charAt(at - 1));
      return (afterDigit ? ' ' : '') + sign.normalize('NFKC');
    });
  return PLAIN.reduce((tidied, [pattern, plain]) => tidied.replace(pattern, plain), spelled)
    .trim()
    .toLowerCase();
}
