import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { sheetSchemas } from './sheet-schemas.ts';
import { problemContent } from '../http/api-problems.ts';

/** The groups of operations, in the order in which a maker comes to them. */
const TAGS = [
  ['bodies', 'Who it is for: what was measured of a body, and what is estimated.'],
  ['garments', 'Garments that fit, measured flat.'],
  ['fabrics', 'A yarn or a swatch, and the fabric it makes.'],
  ['target-sheets', 'How big each piece must be, how sure that is, and what may still go wrong.'],
  ['design rules', 'The numbers behind the advice, with their sources.'],
  ['sizes', 'Published sizes.'],
  ['planners', 'Tools that take a sheet in.'],
  ['hand-offs', 'Sheets sent to planners, and how that went.'],
  ['read-keys', 'Keys that let others read.'],
  ['everything', 'All that is kept, to take along or to erase.'],
  ['health', 'Whether the service is up, and ready.'],
] as const;

/** The OpenAPI 3.1 document of the API, with what holds for every operation added once. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const config = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Easewright')
    .setDescription('From a body, a favourite sweater and a yarn to the finished measurements that will fit.')
    .setVersion('1.0');
  for (const [name, what] of TAGS) config.addTag(name, what);
  const document = SwaggerModule.createDocument(app, config.build(), {
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
