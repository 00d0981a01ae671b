import express, { type Express } from 'express';

/** An express application for Nest to work on. An address is right to the letter or it is not there; Nest uses the router as soon as it has it. */
export function newServer(): Express {
  const server = express();
  for (const setting of ['strict routing', 'case sensitive routing']) server.enable(setting);
  for (const setting of ['x-powered-by', 'etag']) server.disable(setting);
  return server;
}
