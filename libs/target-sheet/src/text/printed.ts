import { text, type TextCodes } from '#advice-text';

type PrintedCodes = TextCodes['printed'];

/** Words of a printed or drawn sheet. */
export const printed = <Code extends keyof PrintedCodes>(code: Code, params: PrintedCodes[Code]): string =>
  text('printed', { code, params }, { tape: 'cm' });
