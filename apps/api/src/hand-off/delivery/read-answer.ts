import type { IncomingMessage } from 'node:http';

/** A planner's answer is read this far and then cut: nobody needs more, and it could be endless. */
const MOST_BYTES = 64 * 1024;
/** What is kept of it, for the maker to see. */
const KEPT_BYTES = 1024;

/** The first kilobyte of an answer as text; the rest is read away, up to 64 kB, and then the connection is closed. */
export async function readAnswer(response: IncomingMessage): Promise<string> {
  const kept: Buffer[] = [];
  let bytes = 0;
  try {
    for await (const chunk of response as AsyncIterable<Buffer>) {
      if (bytes < KEPT_BYTES) kept.push(chunk.subarray(0, KEPT_BYTES - bytes));
      bytes += chunk.length;
      if (bytes > MOST_BYTES) break; // Leaving the loop destroys the response and its socket.
    }
  } catch {
    // The status line has come; an answer that breaks off after it is still that answer.
  }
  return plain(Buffer.concat(kept));
}

/** Text that any database keeps: UTF-8, a character cut in two left out, no control characters but tab and line ends. */
const plain = (bytes: Buffer): string =>
  new TextDecoder().decode(bytes, { stream: true }).replace(/[^\P{Cc}\t\n\r]/gu, '\uFFFD');
