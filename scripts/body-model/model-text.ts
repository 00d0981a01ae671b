import type { BodyModelCoefficients } from '#body';

/** The file's text: a field a line, lists on one line, so that a change of the model reads as a change. */
export function modelText(model: BodyModelCoefficients): string {
  return `${JSON.stringify(model, null, 1).replace(/\[\s+([^[\]{}]*?)\s+\]/g, (_, list: string) => `[${list.replace(/\s*\n\s*/g, ' ')}]`)}\n`;
}
