import { printParseErrorCode, visit } from 'jsonc-parser';
import { isOfEveryObject } from './of-every-object.ts';
import { HttpProblem } from './problem.ts';

/** Deeper than any document here (a sheet request has 5 levels), and far from the depth at which recursion overflows. */
const DEEPEST = 20;

const UTF8 = new TextDecoder('utf-8', { fatal: true });

/**
 * What a JSON body says. Refuses what `JSON.parse` passes in silence: broken UTF-8, nesting that overflows the stack, a key given
 * twice, keys of prototypes, characters that no database text holds.
 *
 * @throws HttpProblem 400, with line and column
 */
export function readJson(bytes: Buffer): object {
  const text = decode(bytes);
  if (!/^\s*\{/.test(text)) throw unreadable('Line 1, column 1: the body must be a JSON object: { … }.');
  const plain = readPlain(text);
  if (plain !== null) return plain;
  checkContent(text);
  try {
    return JSON.parse(text) as object;
  } catch {
    throw unreadable('The body is not JSON.');
  }
}

/** The value of a text where a quick look finds nothing wrong; null where a full check must decide. */
function readPlain(text: string): object | null {
  const names = namesIn(text);
  if (names === null) return null;
  try {
    const value = JSON.parse(text) as object;
    // Of a key given twice one is lost.
    return keysIn(value) === names ? value : null;
  } catch {
    return null;
  }
}

/** How many keys a JSON text gives, by the colons outside of its texts; null with a backslash, or nested too deep. */
function namesIn(text: string): number | null {
  let names = 0;
  let depth = 0;
  let inside = false;
  for (let at = 0; at < text.length; at++) {
    const character = text[at];
    if (character === '\\') return null;
    // Without a backslash, every quote begins or ends a text.
    if (character === '"') inside = !inside;
    else if (inside) continue;
    else if (character === ':') names++;
    else if (character === '}' || character === ']') depth--;
    else if ((character === '{' || character === '[') && ++depth > DEEPEST) return null;
  }
  return names;
}

/** How many keys all objects in a value have; NaN with one that cannot be a name. */
function keysIn(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  let keys = 0;
  if (Array.isArray(value)) for (const item of value) keys += keysIn(item);
  else
    for (const key of Object.keys(value)) {
      keys += isOfEveryObject(key) ? NaN : 1 + keysIn((value as Record<string, unknown>)[key]);
    }
  return keys;
}

function decode(bytes: Buffer): string {
  try {
    return UTF8.decode(bytes);
  } catch {
    throw unreadable(`The body is not UTF-8: byte ${firstBrokenByte(bytes)} does not belong to a character.`);
  }
}

/** Index of the first byte that is not UTF-8: the length of what a forgiving decoder read before its first replacement. */
function firstBrokenByte(bytes: Buffer): number {
  const replaced = Buffer.from(bytes.toString('utf8'));
  return replaced.findIndex((byte, index) => byte !== bytes[index]);
}

/** Depth, keys and texts. What is wrong is thrown where it is met, so nothing is read beyond it. */
function checkContent(text: string): void {
  const open: Set<string>[] = [];
  const enter = (offset: number): void => {
    if (open.push(new Set()) > DEEPEST) {
      throw unreadable(`${placeIn(text, offset)}: nested more than ${DEEPEST} deep.`);
    }
  };
  const leave = () => void open.pop();
  visit(
    text,
    {
      onObjectBegin: enter,
      onObjectEnd: leave,
      onArrayBegin: enter,
      onArrayEnd: leave,
      onObjectProperty: (key, offset) => {
        const seen = open.at(-1);
        if (isOfEveryObject(key)) throw unreadable(`${placeIn(text, offset)}: “${key}” cannot be a name here.`);
        if (seen?.has(key)) throw unreadable(`${placeIn(text, offset)}: “${key.slice(0, 40)}” is given twice.`);
        seen?.add(key);
        checkText(text, key, offset);
      },
      onLiteralValue: (value: unknown, offset) => {
        if (typeof value === 'string') checkText(text, value, offset);
      },
      onError: (code, offset) => {
        throw unreadable(`${placeIn(text, offset)}: not JSON (${inWords(printParseErrorCode(code))}).`);
      },
    },
    { disallowComments: true },
  );
}

function checkText(text: string, value: string, offset: number): void {
  if (value.includes('\0') || !isWellFormed(value)) {
    throw unreadable(
      `${placeIn(text, offset)}: this text holds a character that cannot be kept (NUL or half of a pair).`,
    );
  }
}

/** True without lone surrogates. */
function isWellFormed(value: string): boolean {
  return !/\p{Surrogate}/u.test(value);
}

function placeIn(text: string, offset: number): string {
  const before = text.slice(0, offset).split('\n');
  return `Line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
}

/** `PropertyNameExpected` → `property name expected`. */
function inWords(code: string): string {
  return code.replace(/(?<!^)[A-Z]/g, (c) => ` ${c}`).toLowerCase();
}

function unreadable(detail: string): HttpProblem {
  return new HttpProblem(400, 'unreadable', detail);
}
