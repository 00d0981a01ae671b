import type { IncomingMessage } from 'node:http';
import { createBrotliDecompress, createGunzip, createInflate } from 'node:zlib';
import getRawBody from 'raw-body';
import { HttpProblem } from './problem.ts';

const DECODERS = { gzip: createGunzip, deflate: createInflate, br: createBrotliDecompress } as const;
type Coding = keyof typeof DECODERS;

const isCoding = (name: string): name is Coding => Object.hasOwn(DECODERS, name);

/**
 * The bytes of a body, decompressed. Refuses as soon as it is clear that there are too many, announced or received; what is still to
 * come is then passed over, so that the answer can be read while the upload goes on.
 *
 * @throws HttpProblem 400, 413, 415
 */
export async function readBytes(request: IncomingMessage, limit: number): Promise<Buffer> {
  const name = (request.headers['content-encoding'] ?? 'identity').trim().toLowerCase();
  const length = request.headers['content-length'];
  if (Number(length ?? 0) > limit) throw tooLarge(limit);
  if (name === 'identity') return bytesOf(request, request, limit, length);
  if (isCoding(name)) return decoded(request, name, limit);
  const known = Object.keys(DECODERS).join(', ');
  throw new HttpProblem(
    415,
    'encoding-unknown',
    `A body is read as it is, or compressed with ${known}; not with “${name.slice(0, 40)}”.`,
  );
}

async function decoded(request: IncomingMessage, coding: Coding, limit: number): Promise<Buffer> {
  const decoder = DECODERS[coding]();
  const stop = (): void => void decoder.destroy();
  request.once('aborted', stop).pipe(decoder);
  try {
    return await bytesOf(request, decoder, limit);
  } catch (error) {
    if (error instanceof HttpProblem) throw error;
    const words = `The body is not ${coding}, or not all of it. Compress it again, or send it as it is, without Content-Encoding.`;
    throw new HttpProblem(400, 'encoding-broken', words);
  } finally {
    request.off('aborted', stop);
    stop();
  }
}

async function bytesOf(
  request: IncomingMessage,
  source: NodeJS.ReadableStream,
  limit: number,
  length?: string,
): Promise<Buffer> {
  try {
    return await getRawBody(source, { limit, ...(length !== undefined && { length }) });
  } catch (error) {
    request.unpipe().resume();
    throw (error as Partial<getRawBody.RawBodyError>).type === 'entity.too.large' ? tooLarge(limit) : error;
  }
}

function tooLarge(limit: number): HttpProblem {
  const words = `The body is too large: at most ${limit / 1024} kB are read here, decompressed.`;
  return new HttpProblem(413, 'too-large', words);
}
