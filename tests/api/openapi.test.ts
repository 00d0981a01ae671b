import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { Validator } from '@seriousme/openapi-schema-validator';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeApp } from '../../apps/api/src/app.ts';
import { openApiDocument } from '../../apps/api/src/docs/open-api-document.ts';
import { runApp } from '../support/app.ts';
import { keepExampleRecords } from '../support/kept-examples.ts';

type Operation = {
  operationId?: string;
  tags: string[];
  summary?: string;
  parameters?: { name: string }[];
  requestBody?: { content: Record<string, { example?: object }> };
  responses: Record<string, { description?: string }>;
};
type Paths = Record<string, Record<string, Operation>>;

/** Runs a linter as `npm run lint:openapi` does; gives what it said and its exit code. */
function linted(command: string, ...args: readonly string[]): { readonly code: number; readonly said: string } {
  const env = { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' };
  const run = spawnSync(process.execPath, [command, 'lint', 'apps/api/openapi.json', ...args], {
    env,
    encoding: 'utf8',
  });
  return { code: run.status ?? -1, said: run.stdout + run.stderr };
}

describe('the OpenAPI document', () => {
  const committed = JSON.parse(readFileSync('apps/api/openapi.json', 'utf8')) as {
    openapi: string;
    paths: Paths;
    webhooks: Paths;
    components: { schemas: Record<string, object> };
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

  it('is clean under Redocly’s recommended rules', () => {
    const { code, said } = linted('node_modules/@redocly/cli/bin/cli.js', '--format=json');
    const report = JSON.parse(said.slice(said.indexOf('{\n'), said.lastIndexOf('}') + 1)) as { problems: unknown[] };
    expect(report.problems).toEqual([]);
    expect(code).toBe(0);
  });

  it('is clean under Spectral’s rules for OpenAPI, its warnings included', () => {
    const { code, said } = linted('node_modules/@stoplight/spectral-cli/dist/index.js', '--fail-severity=hint');
    expect(code, said).toBe(0);
  });

  it('has patterns that every engine reads the same, with Unicode switched on or not', () => {
    const patterns = new Set<string>();
    JSON.stringify(committed, (key, value: unknown) => {
      if (key === 'pattern' && typeof value === 'string') patterns.add(value);
      return value;
    });
    expect(patterns.size).toBeGreaterThan(1);
    const samples = ['', 'Grey', 'größer 🧶', 'two\nlines', 'a\u007f', '1.7', '2026-01-31T18:30:00Z'];
    for (const pattern of patterns) {
      const [plain, unicode, sets] = ['', 'u', 'v'].map((flags) => new RegExp(pattern, flags));
      for (const sample of samples) {
        expect(unicode?.test(sample), `${pattern} on ${JSON.stringify(sample)}`).toBe(plain?.test(sample));
        expect(sets?.test(sample)).toBe(plain?.test(sample));
      }
    }
  });

  it('requires what is required: nothing that has a default', () => {
    const defaults = Object.entries(committed.components.schemas).filter(([name, schema]) =>
      name.startsWith('TargetSheet') ? false : /"default":[^{]/.test(JSON.stringify(schema)),
    );
    expect(defaults.map(([name]) => name)).toEqual([]);
  });

  it('says what a push sends', () => {
    const push = committed.webhooks['handOff']?.['post'];
    expect(push?.parameters?.map(({ name }) => name)).toEqual(['webhook-id', 'webhook-timestamp', 'webhook-signature']);
  });

  it('is at /openapi.json, as it is in /docs', async () => {
    const app = await makeApp({ SQLITE_FILE: ':memory:' });
    await app.listen(0, '127.0.0.1');
    const url = await app.getUrl();
    for (const path of ['/openapi.json', '/docs/openapi.json'])
      expect(await (await fetch(url + path)).json(), path).toEqual(committed);
    await app.close();
  });

  it('has an example of every body that can be written by hand, and each is taken', async () => {
    const api = await runApp('sqlite', { HANDOFF_ALLOW: '0.0.0.0/0' });
    const ids = await keepExampleRecords(api);
    const without: string[] = [];
    for (const [path, methods] of Object.entries(committed.paths)) {
      const { post } = methods;
      const json = post?.requestBody?.content['application/json'];
      if (json === undefined) continue;
      if (json.example === undefined) without.push(path);
      if (json.example === undefined || /^\/v1\/(planners|target-sheets)\/\{id\}/.test(path)) continue;
      const { bodyId, fabricId } = ids;
      const example = { ...json.example, ...('bodyId' in json.example && { bodyId, fabricId }) };
      const response = await api.http.post(path).send(example);
      expect(response.status, `${path}: ${response.text.slice(0, 300)}`).toBeLessThan(300);
    }
    expect(without).toEqual(['/v1/import', '/v1/target-sheets/import']);
    await api.stop();
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
