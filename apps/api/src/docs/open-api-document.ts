import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { READ_KEY_SCHEME } from '../hand-off/read-keys/open-to-read-keys.ts';
import { problemContent } from '../http/api-problems.ts';
import { EXAMPLES } from './examples.ts';
import { plainSchemas } from './plain-schemas.ts';
import { sheetSchemas } from './sheet-schemas.ts';
import { WEBHOOKS } from './webhooks.ts';

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

interface Answer {
  description?: string;
  headers?: Record<string, object>;
}

interface Operation {
  operationId?: string;
  security?: object[];
  parameters?: object[];
  requestBody?: { content: Record<string, { example?: unknown }> };
  responses: Record<string, Answer>;
}

/** The OpenAPI 3.1 document of the API, with what holds for every operation added once. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const config = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Easewright')
    .setDescription('From a body, a favourite sweater and a yarn to the finished measurements that will fit.')
    .setVersion('1.0')
    .setLicense('MIT', 'https://opensource.org/license/mit')
    .addServer('/', 'The service that this document comes from.')
    .addBearerAuth(
      {
        type: 'http',
        scheme: 'bearer',
        description: 'A read key: see POST /v1/read-keys. The maker herself needs none.',
      },
      READ_KEY_SCHEME,
    );
  for (const [name, what] of TAGS) config.addTag(name, what);
  const document = SwaggerModule.createDocument(app, config.build(), {
    operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '')}_${method}`,
  });
  for (const path of Object.values(document.paths)) {
    for (const [method, operation] of Object.entries(path) as [string, Operation][]) {
      complete(operation);
      if (method === 'get') addCaching(operation);
    }
  }
  const schemas = plainSchemas({ ...document.components?.schemas });
  return {
    ...document,
    security: [],
    components: { ...document.components, schemas: { ...schemas, ...sheetSchemas() } },
    webhooks: WEBHOOKS,
  };
}

/** What holds for every operation: its problems, an example of its body, and that a key is for planners, not for the maker. */
function complete(operation: Operation): void {
  const { operationId = '', requestBody, responses, security } = operation;
  responses['400'] ??= problemContent('Not readable: the address, a parameter or a header.');
  responses['default'] = problemContent('Any other problem.');
  const json = requestBody?.content['application/json'];
  const example = EXAMPLES[operationId];
  if (json !== undefined && example !== undefined) json.example = example;
  if (security !== undefined) operation.security = [...security, {}];
}

const IF_NONE_MATCH = {
  name: 'If-None-Match',
  in: 'header',
  required: false,
  description: 'The ETag of what is known already.',
  schema: { type: 'string', example: '"1"' },
};
const NOT_MODIFIED = { description: 'As the request knows it.' };
const ETAG = { description: 'Of this answer, for If-None-Match.', schema: { type: 'string' } };

const LINK = {
  description: 'Where the next page is, and the first (RFC 8288): <…>; rel="next".',
  schema: { type: 'string' },
};

/** Whatever is read has an ETag, and is not sent again to who names it. */
function addCaching(operation: Operation): void {
  const { responses, parameters = [] } = operation;
  operation.parameters = [...parameters, IF_NONE_MATCH];
  responses['304'] = NOT_MODIFIED;
  const found = responses['200'];
  if (found === undefined) return;
  const isList = parameters.some((parameter) => 'name' in parameter && parameter.name === 'cursor');
  found.headers = { ETag: ETAG, ...(isList && { Link: LINK }), ...found.headers };
}
