import { STATUS_CODES } from 'node:http';
import fc, { type Arbitrary } from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES, type DatabaseKind } from '../support/databases.ts';
import { exampleBody, exampleDesign, exampleFabric, exampleGarment, exampleRequest } from '../support/examples.ts';
import { valuesOf } from '../support/from-schema.ts';
import { spoilt } from '../support/junk.ts';
import { document, expectAnswerMatches, type Answer, type Operation, type Parameter } from '../support/matches-api.ts';

const RUNS: Readonly<Record<DatabaseKind, number>> = { sqlite: 60, postgres: 20 };

/** A hang is an answer that does not come; far above what any takes. */
const PATIENCE_MS = 30_000;

/** Bodies that are right, to be spoilt. */
const EXAMPLES: Readonly<Record<string, (ids: Ids) => object>> = {
  '/v1/bodies': () => exampleBody,
  '/v1/bodies/{id}': () => exampleBody,
  '/v1/bodies/profile': () => ({
    body: exampleBody,
    garment: exampleGarment,
    design: exampleDesign,
    fabric: exampleFabric,
  }),
  '/v1/garments': () => exampleGarment,
  '/v1/garments/{id}': () => exampleGarment,
  '/v1/fabrics': () => exampleFabric,
  '/v1/fabrics/{id}': () => exampleFabric,
  '/v1/target-sheets/compute': () => ({
    ...exampleRequest,
    garment: exampleGarment,
    design: { ...exampleDesign, basis: 'both', layer: { thickness: { value: 2, unit: 'mm' }, sleeves: 'long' } },
    made: [{ piece: 'back', name: 'width', value: 53, unit: 'cm' }],
    rules: { 'ordinary-thickness': 3 },
  }),
  '/v1/target-sheets/run': () => ({
    table: 'craft-yarn-council-child',
    sizes: ['6'],
    fabric: exampleFabric,
    design: exampleDesign,
  }),
  '/v1/target-sheets': (ids) => ({ ...inputIds(ids), design: exampleDesign }),
};

/** Of something known of each kind, by the name of its kind in an address. */
type Ids = Readonly<Record<string, string>>;

const inputIds = ({ bodies, garments, fabrics }: Ids) => ({ bodyId: bodies, garmentId: garments, fabricId: fabrics });

interface Sent {
  readonly address: string;
  readonly headers: Readonly<Record<string, string>>;
  /** Bytes, each as the character of its number. */
  readonly body: string | null;
}

/** What erases comes last: it would take away what the others are tried on. */
const OPERATIONS = Object.entries(document.paths)
  .flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ method: method.toUpperCase(), path, operation })),
  )
  .sort((a, b) => Number(a.method === 'DELETE') - Number(b.method === 'DELETE'));
const FORMS = ['application/json', 'text/csv', 'image/svg+xml', 'text/plain', '*/*', 'application/pdf', 'nonsense'];
const VERSIONS = ['"1"', '"2"', '*', '1', '"', 'W/"1"', '"1", "9"', ''];
const JUNK = ['', '0', '-1', '1e308', 'NaN', '[]', '__proto__', "';--", '\u0000', '🧶', 'a'.repeat(3000), '%'];

function requestsFor(path: string, operation: Operation, ids: Ids): Arbitrary<Sent> {
  const parameters = operation.parameters ?? [];
  const inPlace = (place: string) => parameters.filter((parameter) => parameter.in === place);
  const schema = operation.requestBody?.content['application/json']?.schema;
  const example = EXAMPLES[path]?.(ids);
  const bodies = schema && [valuesOf(schema, document.components.schemas), ...(example ? [fc.constant(example)] : [])];
  return fc.record({
    address: fc
      .tuple(
        addresses(path, ids),
        fc.array(fc.oneof(...inPlace('query').map(queries), fc.constant('x=1')), { maxLength: 3 }),
      )
      .map(([place, query]) => [place, ...(query.length > 0 ? [query.join('&')] : [])].join('?')),
    headers: fc.record(
      {
        accept: fc.constantFrom(...FORMS),
        'if-match': fc.constantFrom(...VERSIONS),
        'if-none-match': fc.constantFrom(...VERSIONS),
        'accept-encoding': fc.constantFrom('gzip', 'br;q=0, *', 'identity', 'nonsense', ''),
        'idempotency-key': fc.constantFrom('one', 'two', '', 'a b', 'x'.repeat(300)),
      },
      { requiredKeys: [], noNullPrototype: true },
    ),
    body: bodies ? spoilt(fc.oneof(...bodies)) : fc.constant(null),
  });
}

function addresses(path: string, ids: Ids): Arbitrary<string> {
  const pieces = path
    .split('/')
    .map((piece) => (piece.startsWith('{') ? names(ids[path.split('/')[2] ?? '']) : fc.constant(piece)));
  return fc.tuple(...pieces).map((all) => all.join('/'));
}

/** What may stand for an id: mostly one that is known. */
function names(known: string | undefined): Arbitrary<string> {
  const junk = fc.oneof(fc.uuid(), fc.constantFrom(...JUNK.filter(Boolean)));
  const any =
    known === undefined ? junk : fc.oneof({ weight: 3, arbitrary: fc.constant(known) }, { weight: 1, arbitrary: junk });
  return any.map(encodeURIComponent);
}

/** `confirm` stays out: it erases what the other requests are made of. */
function queries({ name, schema }: Parameter): Arbitrary<string> {
  const values = name === 'confirm' ? fc.constant('yes') : fc.oneof(valuesOf(schema, {}), fc.constantFrom(...JUNK));
  return values.map((value) => `${name}=${encodeURIComponent(String(value))}`);
}

/** Answers as documented; never with a fault, and a refusal says where. */
describe.each(DATABASES)('whatever is sent, on %s', (kind) => {
  let api: RunningApp;
  let ids: Ids;
  let base: string;

  beforeAll(async () => {
    api = await runApp(kind);
    base = await api.app.getUrl();
    const make = async (path: string, body: object) =>
      (await api.http.post(path).send(body).expect(201)).body.id as string;
    const bodies = await make('/v1/bodies', exampleBody);
    const garments = await make('/v1/garments', exampleGarment);
    const fabrics = await make('/v1/fabrics', exampleFabric);
    const inputs = { bodies, garments, fabrics, sizes: 'craft-yarn-council-man' };
    const sheet = await make('/v1/target-sheets', { ...inputIds(inputs), design: exampleDesign });
    ids = { ...inputs, 'target-sheets': sheet };
  });
  afterAll(() => api.stop());

  const send = async (method: string, { address, headers, body }: Sent): Promise<Answer> => {
    const response = await fetch(base + address, {
      method,
      headers: { ...headers, ...(body !== null && { 'content-type': 'application/json' }) },
      body: body === null ? null : Buffer.from(body, 'latin1'),
      redirect: 'manual',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    const path = new URL(base + address).pathname;
    const type = response.headers.get('content-type') ?? '';
    return { method, path, status: response.status, type, text: await response.text() };
  };

  it.each(OPERATIONS)('$method $path', async (each) => {
    const { method, path, operation } = each;
    await fc.assert(
      fc.asyncProperty(requestsFor(path, operation, ids), async (sent) => {
        const answer = await send(method, sent);
        expect(answer.status, answer.text).toBeLessThan(500);
        if (/^\/(v1\/[^/]+|health|ready)/.test(answer.path)) expectAnswerMatches({ ...answer, path: concrete(path) });
        if (answer.status >= 400) expectNamesThePlace(answer);
      }),
      { numRuns: operation.requestBody || operation.parameters?.length ? RUNS[kind] : 3 },
    );
  });

  it('leaves every row whole', async () => {
    const exported = await send('GET', { address: '/v1/export', headers: {}, body: null });
    expect(exported.status).toBe(200);
    expectAnswerMatches(exported);
  });
});

/** An address of the template itself, whatever junk stood in for its parameters. */
const concrete = (path: string): string => path.replaceAll(/\{[^}]+\}/g, '01900000-0000-7000-8000-000000000000');

/** Every refusal is a problem that says what was wrong and what would be right: in a sentence, and for each field or parameter. */
function expectNamesThePlace({ method, status, text, type }: Answer): void {
  if (method === 'HEAD') return;
  expect(type).toMatch(/^application\/problem\+json/);
  const problem = JSON.parse(text) as {
    title: string;
    status: number;
    code: string;
    detail: string;
    errors?: { pointer?: string; parameter?: string; detail: string }[];
  };
  expect(problem).toMatchObject({ status, title: STATUS_CODES[status] });
  expect(problem.code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  expect(problem.detail, text).toMatch(/^["“A-Z0-9].{15,}\.$/s);
  if (problem.code === 'invalid-parameter')
    expect(problem.errors?.every(({ parameter }) => parameter !== undefined)).toBe(true);
  if (status === 422) {
    expect(problem.errors?.length, text).toBeGreaterThan(0);
    for (const { pointer } of problem.errors ?? []) expect(pointer, text).toMatch(/^(\/|$)/);
  }
  for (const { detail } of problem.errors ?? []) expect(detail, text).toMatch(/.{8,}/s);
}
