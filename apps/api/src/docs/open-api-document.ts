import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { sheetSchemas } from './sheet-schemas.ts';
import { problemContent } from '../http/api-problems.ts';

/** The OpenAPI 3.1 document of the API, with what holds for every operation added once. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const config = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Easewright')
    .setDescription('From a body, a favourite sweater and a yarn to the finished measurements that will fit.')
    .setVersion('1.0')
    .build();
  const document = SwaggerModule.createDocument(app, config, {
    operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '')}_${method}`,
  });
  for (const path of Object.values(document.paths)) {
    for (const operation of Object.values(path) as { responses?: Record<string, object> }[]) {
      if (operation.responses !== undefined) operation.responses['default'] = problemContent('Any other problem.');
    }
  }
  const schemas = document.components?.schemas ?? {};
  for (const schema of Object.values(schemas)) {
    if ('properties' in schema && schema.additionalProperties === undefined) schema.additionalProperties = false;
  }
  return { ...document, components: { ...document.components, schemas: { ...schemas, ...sheetSchemas() } } };
}
