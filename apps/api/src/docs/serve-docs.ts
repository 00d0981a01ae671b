import type { NestExpressApplication } from '@nestjs/platform-express';
import { SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import type { Application, NextFunction, Request, Response } from 'express';
import { etagOfText } from '../http/etag-of-text.ts';
import { openApiDocument } from './open-api-document.ts';

/** The documentation to browse at /docs, and the document itself at /openapi.json, and in /docs as JSON and YAML. */
export function serveDocs(app: NestExpressApplication): void {
  let made: OpenAPIObject | undefined;
  const document = (): OpenAPIObject => (made ??= openApiDocument(app));
  const express = app.getHttpAdapter().getInstance() as Application;
  express.use(/^\/(?:docs|openapi\.json)(?=\/|$)/, letBeKept);
  express.get('/openapi.json', (_request: Request, response: Response) => void response.json(document()));
  SwaggerModule.setup('docs', app, document, {
    jsonDocumentUrl: 'docs/openapi.json',
    yamlDocumentUrl: 'docs/openapi.yaml',
    customSiteTitle: 'Easewright API',
    swaggerOptions: { validatorUrl: null },
  });
}

/** Lets an answer be kept, to be asked for again by its ETag. */
function letBeKept(_request: Request, response: Response, next: NextFunction): void {
  response.set('Cache-Control', 'private, no-cache');
  const send = response.send.bind(response);
  response.send = (body: unknown) => {
    if (typeof body === 'string') response.set('ETag', etagOfText(body));
    return send(body);
  };
  next();
}
