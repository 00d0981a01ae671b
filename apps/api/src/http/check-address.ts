import type { NextFunction, Request, Response } from 'express';
import { HttpProblem } from './problem.ts';

/** No address of the API comes near it. */
const LONGEST = 4096;

/** Refuses an address that cannot be read, before anything is looked for at it. */
export function checkAddress({ originalUrl: address }: Request, _response: Response, next: NextFunction): void {
  if (address.length > LONGEST) {
    const words = `The address has ${address.length} characters; at most ${LONGEST} are read. Send what is long in the body.`;
    return next(new HttpProblem(414, 'address-too-long', words));
  }
  const broken = brokenEscape(address);
  if (broken === null) return next();
  const words = `The address holds “${broken}”, which is no character; write UTF-8, each byte as % and two hexadecimal digits, and % itself as %25.`;
  next(new HttpProblem(400, 'address-unreadable', words));
}

/** The first run of escapes that gives no text; null where all do. */
function brokenEscape(address: string): string | null {
  if (!address.includes('%')) return null;
  const runs = address.match(/(?:%[0-9a-f]{2})+|%.{0,2}/gi) ?? [];
  return runs.find((run) => !isReadable(run)) ?? null;
}

function isReadable(escapes: string): boolean {
  try {
    return !decodeURIComponent(escapes).includes('\0');
  } catch {
    return false;
  }
}
