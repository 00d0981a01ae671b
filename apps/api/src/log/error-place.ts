/** The kind of an error and the lines of code it came through; never its message, which may quote what a maker entered. */
export function errorPlace(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  const code: unknown = (error as { code?: unknown }).code;
  return [`${error.name} ${typeof code === 'string' ? code : ''}`.trim(), ...framesOf(error.stack ?? '')].join('\n');
}

/** A stack without its first lines, which are the message. */
export const framesOf = (stack: string): string[] => stack.split('\n').filter((line) => /^\s+at /.test(line));
