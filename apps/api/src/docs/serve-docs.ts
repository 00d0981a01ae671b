import type { NestExpressApplication } from '@nestjs/platform-express';
import { SwaggerModule } from '@nestjs/swagger';
import { openApiDocument } from './open-api-document.ts';

/** The documentation to browse at /docs, and the document itself at /docs/openapi.json. */
export function serveDocs(app: NestExpressApplication): void {
  SwaggerModule.setup('docs', app, () => openApiDocument(app), {
    jsonDocumentUrl: 'docs/openapi.json',
    yamlDocumentUrl: 'docs/openapi.yaml',
    customSiteTitle: 'Easewright API',
    swaggerOptions: { validatorUrl: null },
  });
}
