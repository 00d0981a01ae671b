import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import { setTimeout as delay } from 'node:timers/promises';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { HttpProblem } from './http/problem.ts';

const LOOK_MS = 50;

/**
 * Stops the service: takes no new work, finishes what it has accepted, and cuts what is not finished after `deadlineMs`. What
 * is cut was not answered, and nothing of it is half written.
 */
export async function stop(app: NestExpressApplication, deadlineMs: number): Promise<void> {
  const server = app.getHttpServer() as Server;
  server.removeAllListeners('request').on('request', refuse);
  const drained = new Promise<void>((done) => server.close(() => done()));
  // A connection that is kept open after its last answer has nothing to wait for.
  const looking = setInterval(() => server.closeIdleConnections(), LOOK_MS);
  await Promise.race([drained, delay(deadlineMs, undefined, { ref: false })]);
  clearInterval(looking);
  server.closeAllConnections();
  await app.close();
}

function refuse(_request: IncomingMessage, response: ServerResponse): void {
  const problem = new HttpProblem(503, 'stopping', 'The service is stopping. Nothing was written.');
  response
    .writeHead(503, { 'Content-Type': 'application/problem+json', 'Retry-After': '5', Connection: 'close' })
    .end(JSON.stringify(problem.toDocument()));
}
