import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Response } from 'supertest';
import { expect } from 'vitest';

interface Operation {
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, unknown>> }>>;
}
const document = JSON.parse(readFileSync('apps/api/openapi.json', 'utf8')) as {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
};

const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
ajv.addSchema(document, 'api');
const compiled = new Map<string, ValidateFunction>();

/** Checks an answer against what the committed OpenAPI document says of its operation, status and media type. */
export function expectMatchesApi(response: Response): void {
  const { method, url } = (response as unknown as { request: { method: string; url: string } }).request;
  const path = templateOf(new URL(url, 'http://localhost').pathname);
  const operation = document.paths[path]?.[method.toLowerCase()];
  if (operation === undefined) throw new Error(`${method} ${path} is not in openapi.json`);
  const status = String(response.status) in operation.responses ? String(response.status) : 'default';
  const content = operation.responses[status]?.content;
  const type = (response.headers['content-type'] ?? '').split(';')[0] ?? '';
  if (content === undefined)
    return void expect(response.text, `${method} ${path} ${response.status} has no body`).toBeFalsy();
  expect(Object.keys(content), `media type of ${method} ${path} ${response.status}`).toContain(type);
  if (!type.endsWith('json')) return;
  const validate = validatorOf(['paths', path, method.toLowerCase(), 'responses', status, 'content', type, 'schema']);
  expect(validate(response.body) ? [] : validate.errors, `${method} ${path} ${response.status}`).toEqual([]);
}

function validatorOf(way: readonly string[]): ValidateFunction {
  const pointer = way.map((step) => encodeURIComponent(step.replaceAll('~', '~0').replaceAll('/', '~1'))).join('/');
  const known = compiled.get(pointer) ?? ajv.compile({ $ref: `api#/${pointer}` });
  compiled.set(pointer, known);
  return known;
}

/** The path of the document that an address belongs to; a literal one before one with parameters. */
function templateOf(path: string): string {
  if (path in document.paths) return path;
  const parts = path.split('/');
  const fits = (template: string): boolean => {
    const steps = template.split('/');
    return steps.length === parts.length && steps.every((step, index) => step.startsWith('{') || step === parts[index]);
  };
  return Object.keys(document.paths).find(fits) ?? path;
}
