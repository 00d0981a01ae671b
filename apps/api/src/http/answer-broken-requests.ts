import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { Duplex } from 'node:stream';
import { HttpProblem } from './problem.ts';
import { SHEET_LIMIT } from './read-body.ts';

/** What Node's parser gives up on, by its code. Everything else is no HTTP. */
const PROBLEMS: Readonly<Record<string, HttpProblem>> = {
  HPE_HEADER_OVERFLOW: new HttpProblem(
    431,
    'headers-too-long',
    'The address and the headers together are too long: at most 16 kB are read.',
  ),
  ERR_HTTP_REQUEST_TIMEOUT: new HttpProblem(
    408,
    'too-slow',
    'The request did not come to an end in time; send it again.',
  ),
};
const NO_HTTP = new HttpProblem(400, 'unreadable', 'This is no HTTP/1.1 request; see /docs for what can be asked for.');

/** Answers what never becomes a request with a problem document too, as far as Node lets one write it. */
export function answerBrokenRequests(server: Server): void {
  // The host is checked by this service itself.
  Object.assign(server, { requireHostHeader: false });
  server.on('clientError', ({ code = '' }: NodeJS.ErrnoException, socket) => {
    if (code === 'ECONNRESET' || !socket.writable) return void socket.destroy();
    answer(socket, PROBLEMS[code] ?? NO_HTTP);
  });
  server.on('checkContinue', (request: IncomingMessage, response: ServerResponse) => {
    // A client that asks first is not let upload what would be refused.
    if (Number(request.headers['content-length'] ?? 0) <= SHEET_LIMIT) response.writeContinue();
    server.emit('request', request, response);
  });
}

function answer(socket: Duplex, problem: HttpProblem): void {
  const { title, status } = problem.toDocument();
  const body = JSON.stringify(problem.toDocument());
  const head = [
    `HTTP/1.1 ${status} ${title}`,
    'Content-Type: application/problem+json; charset=utf-8',
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Cache-Control: no-store',
    `Date: ${new Date().toUTCString()}`,
    'Connection: close',
  ];
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
}
