import { readFileSync } from 'node:fs';
import { Validator } from '@seriousme/openapi-schema-validator';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeApp } from '../../apps/api/src/app.ts';
import { openApiDocument } from '../../apps/api/src/docs/open-api-document.ts';

type Operation = {
  operationId?: string;
  tags: string[];
  summary?: string;
  responses: Record<string, { description?: string }>;
};
type Paths = Record<string, Record<string, Operation>>;

describe('the OpenAPI document', () => {
  const committed = JSON.parse(readFileSync('apps/api/openapi.json', 'utf8')) as {
    openapi: string;
    paths: Paths;
    tags: { name: string; description: string }[];
  };
  const operations = Object.entries(committed.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ name: `${method} ${path}`, operation })),
  );
  let generated: unknown;
  beforeAll(async () => {
    const app = await makeApp({ SQLITE_FILE: ':memory:' });
    await app.init();
    generated = JSON.parse(JSON.stringify(openApiDocument(app)));
    await app.close();
  });

  it('as committed is the one that the code gives: else run `npm run openapi`', () => {
    expect(committed).toEqual(generated);
  });

  it('is valid OpenAPI 3.1', async () => {
    const result = await new Validator().validate(structuredClone(committed));
    expect(result.errors ?? []).toEqual([]);
    expect(committed.openapi).toBe('3.1.0');
  });

  it('names every operation once and says what it does', () => {
    const ids = operations.map(({ operation }) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(operations.filter(({ operation }) => !operation.summary).map(({ name }) => name)).toEqual([]);
  });

  it('says of every group of operations what it is for', () => {
    const used = new Set(operations.flatMap(({ operation }) => operation.tags));
    expect(new Set(committed.tags.map(({ name }) => name))).toEqual(used);
    for (const { description } of committed.tags) expect(description).toMatch(/^[A-Z].*\.$/);
  });

  it('describes every answer, a problem among them', () => {
    for (const { name, operation } of operations) {
      expect(
        Object.values(operation.responses).every(({ description }) => description),
        name,
      ).toBe(true);
      expect(JSON.stringify(operation.responses['default']), name).toContain('application/problem+json');
    }
  });
});
