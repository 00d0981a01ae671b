import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { static as files, type NextFunction, type Request, type Response } from 'express';

/** Addresses that belong to the API; every other is a place in the page. */
const API = /^\/(v1|docs|health|ready)(\/|$)/;

/** Serves the built page at `/`. Where none has been built, `/` leads to the documentation. */
export function servePage(app: NestExpressApplication, folder: string): void {
  const start = join(folder, 'index.html');
  if (!existsSync(start)) {
    app.use('/', (request: Request, response: Response, next: NextFunction) =>
      request.path === '/' ? response.redirect('/docs') : next(),
    );
    return;
  }
  app.use(files(folder, { index: false, setHeaders: cacheHashed }));
  app.use((request: Request, response: Response, next: NextFunction) => {
    if (request.method !== 'GET' || API.test(request.path) || !request.accepts('html')) return next();
    response.set('Cache-Control', 'no-cache').sendFile(start);
  });
}

/** Files in `assets/` carry a hash of their content in their names. */
function cacheHashed(response: Response, file: string): void {
  response.set('Cache-Control', /[\\/]assets[\\/]/.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache');
}
