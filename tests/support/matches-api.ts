import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Response } from 'supertest';
import { expect } from 'vitest';
import type { Schema } from './from-schema.ts';

export interface Operation {
  readonly parameters?: readonly Parameter[];
  readonly security?: readonly object[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: Schema }>> };
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, unknown>> }>>;
}

export interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly schema: Schema;
}

/** The committed OpenAPI document, as far as the tests read it. */
export const document = JSON.parse(readFileSync('apps/api/openapi.json', 'utf8')) as {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
};

const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
ajv.addSchema(document, 'api');
const compiled = new Map<string, ValidateFunction>();

/** An answer of the API to a request, as it came. */
export interface Answer {
  readonly method: string;
  readonly path: string;
  readonly status: number;
  readonly type: string;
  readonly text: string;
}

/** Checks an answer against what the committed OpenAPI document says of its operation, status and media type. */
export function expectMatchesApi(response: Response): void {
  const { method, url } = (response as unknown as { request: { method: string; url: string } }).request;
  const { status, text = '' } = response;
  const path = new URL(url, 'http://localhost').pathname;
  expectAnswerMatches({ method, path, status, type: response.headers['content-type'] ?? '', text });
}

/** The same for an answer that was not got by supertest. */
export function expectAnswerMatches({ method, path, status, type, text }: Answer): void {
  const template = templateOf(path);
  const operation = document.paths[template]?.[method.toLowerCase()];
  const what = `${method} ${template} ${status}`;
  if (operation === undefined) return; // the page, the documentation, and addresses where there is nothing
  const described = String(status) in operation.responses ? String(status) : 'default';
  const content = operation.responses[described]?.content;
  if (content === undefined) return void expect(text, `${what} has no body`).toBe('');
  const [media = ''] = type.split(';');
  expect(Object.keys(content), `media type of ${what}`).toContain(media);
  if (!media.endsWith('json')) return;
  const validate = validatorOf([
    'paths',
    template,
    method.toLowerCase(),
    'responses',
    described,
    'content',
    media,
    'schema',
  ]);
  expect(validate(JSON.parse(text)) ? [] : validate.errors, what).toEqual([]);
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
