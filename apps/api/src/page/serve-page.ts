import { extname } from 'node:path';
import type { NestExpressApplication } from '@nestjs/platform-express';
import type { Application, Request, Response } from 'express';
import { pageFiles, type PageFile } from './page-files.ts';

/** Serves the built page: `/` and its files, and no other address. Where none has been built, `/` leads to the documentation. */
export function servePage(app: NestExpressApplication, folder: string): void {
  const express = app.getHttpAdapter().getInstance() as Application;
  const files = pageFiles(folder);
  if (files.size === 0) {
    express.get('/', (_request, response) => response.redirect('/docs'));
    return;
  }
  express.get(anyOf([...files.keys()]), (request: Request, response: Response) => {
    const file = files.get(request.path);
    if (file !== undefined) send(file, request, response);
  });
}

/** One pattern for all of them, since a router tries one after the other. */
function anyOf(addresses: readonly string[]): RegExp {
  return new RegExp(`^(?:${addresses.map((address) => address.replace(/[^\w/-]/g, '\\$&')).join('|')})$`);
}

/** Sends it in the best of the codings that it is there in and that the request accepts. */
function send({ file, compressed, hash }: PageFile, request: Request, response: Response): void {
  const coding = [...compressed.keys()].find((each) => request.acceptsEncodings(each) !== false);
  if (compressed.size > 0) response.vary('Accept-Encoding');
  if (coding !== undefined) response.setHeader('Content-Encoding', coding);
  if (hash !== null) response.setHeader('ETag', coding === undefined ? `"${hash}"` : `"${hash}-${coding}"`);
  response
    .type(extname(file))
    .set('Cache-Control', hash === null ? 'public, max-age=31536000, immutable' : 'no-cache')
    .sendFile((coding && compressed.get(coding)) ?? file, { cacheControl: false });
}
