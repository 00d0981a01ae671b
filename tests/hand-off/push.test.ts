import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody } from '../support/examples.ts';
import { keepExampleRecords, keepExampleSheet } from '../support/kept-examples.ts';
import { expectMatchesApi } from '../support/matches-api.ts';
import { RealPlanner, verified } from '../support/real-planner.ts';
import { until } from '../support/until.ts';

/** What the planner's own people wrote down: inches in quarters, their names, their nesting. */
const theirSchema = {
  type: 'object',
  additionalProperties: false,
  required: ['job', 'parts'],
  properties: {
    job: {
      type: 'object',
      additionalProperties: false,
      required: ['label', 'units'],
      properties: { label: { type: 'string' }, units: { const: 'in' } },
    },
    parts: {
      type: 'array',
      minItems: 3,
      maxItems: 3,
      items: {
        type: 'object',
        additionalProperties: false,
        required: ['wide', 'tall'],
        properties: { wide: { type: 'number', multipleOf: 0.25 }, tall: { type: 'number', multipleOf: 0.25 } },
      },
    },
  },
};

const theirNames = {
  'sheet/title': '/job/label',
  'sheet/unit': '/job/units',
  'back/width': '/parts/0/wide',
  'back/shoulder-to-hem': '/parts/0/tall',
  'front/width': '/parts/1/wide',
  'front/shoulder-to-hem': '/parts/1/tall',
  'sleeve/sleeve-top-width': '/parts/2/wide',
  'sleeve/sleeve-length': '/parts/2/tall',
};
const takes = { unit: 'in', roundingStep: 0.25, format: 'flat', names: theirNames, required: ['sleeve/sleeve-length'] };

describe.each(DATABASES)('a push on %s', (kind) => {
  let api: RunningApp;
  let planner: RealPlanner;
  let sheet: { readonly id: string };
  beforeAll(async () => {
    api = await runApp(kind, { HANDOFF_ALLOW: 'loopback', PUBLIC_URL: 'https://easewright.example/' });
    planner = await RealPlanner.start();
    sheet = await keepExampleSheet(api);
  });
  afterAll(async () => {
    await api.stop();
    await planner.stop();
  });
  beforeEach(() => planner.answersWith());

  const register = async (more: object = {}) => {
    const request = { title: 'Row by row', address: planner.address, takes, ...more };
    const response = await api.http.post('/v1/planners').send(request).expect(201);
    expectMatchesApi(response);
    return response.body as { id: string; secret: string; version: number };
  };
  const handOn = (plannerId: string, key?: string) => {
    const request = api.http.post(`/v1/target-sheets/${sheet.id}/hand-offs`).send({ plannerId });
    return key === undefined ? request : request.set('Idempotency-Key', key);
  };
  const sent = async (plannerId: string): Promise<string> => {
    const response = await handOn(plannerId).expect(201);
    expectMatchesApi(response);
    expect(response.headers['location']).toBe(`/v1/hand-offs/${response.body.id}`);
    return response.body.id;
  };
  const read = async (id: string) => {
    const response = await api.http.get(`/v1/hand-offs/${id}`).expect(200);
    expectMatchesApi(response);
    return response.body;
  };
  const reaches = (id: string, state: string) =>
    until(async () => {
      const handOff = await read(id);
      return handOff.state === state && handOff;
    });
  const plannerState = async (id: string) => (await api.http.get(`/v1/planners/${id}`).expect(200)).body.state;

  it('brings the planner its own document, signed', async () => {
    const { id: plannerId, secret } = await register();
    const id = await sent(plannerId);
    const handOff = await reaches(id, 'arrived');
    const [received] = planner.receivedAs(id);
    if (!received) throw new Error('nothing came');
    expect(received.headers['content-type']).toBe('application/json');
    const document = verified(received, secret);
    const validate = new Ajv2020().compile(theirSchema);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    // Worked example 1 of the model: p 510.9 mm = 20.11 in → 20; shoulder to hem 607.6 = 23.92 → 24; armhole 229.2 twice
    // 458.4 = 18.05 → 18; sleeve 487.5 = 19.19, half of the width's −0.11 back: 19.25 → 19¼.
    expect(document).toEqual({
      job: { label: 'Grey pullover', units: 'in' },
      parts: [
        { wide: 20, tall: 24 },
        { wide: 20, tall: 24 },
        { wide: 18, tall: 19.25 },
      ],
    });
    expect(handOff).toMatchObject({ tries: 1, nextTryAt: null, body: received.body });
    expect(handOff.attempts).toMatchObject([{ status: 200, failure: null }]);
  });

  it('is what the preview shows, to the letter', async () => {
    const { id: plannerId } = await register();
    const preview = await api.http.get(`/v1/planners/${plannerId}/preview?targetSheet=${sheet.id}`).expect(200);
    expectMatchesApi(preview);
    const id = await sent(plannerId);
    await reaches(id, 'arrived');
    expect(planner.receivedAs(id)[0]?.body).toBe(preview.body.body);
  });

  it('is tried again after a 500, with the same id and a new time', async () => {
    planner.answersWith({ status: 500 });
    const { id: plannerId, secret } = await register();
    const id = await sent(plannerId);
    const handOff = await reaches(id, 'arrived');
    expect(handOff.attempts).toMatchObject([{ status: 500, answer: 'answered 500' }, { status: 200 }]);
    const [first, second] = planner.receivedAs(id);
    if (!first || !second) throw new Error('it came once');
    expect(second.body).toBe(first.body);
    expect(second.headers['webhook-timestamp']).not.toBe(first.headers['webhook-timestamp']);
    expect(() => [first, second].map((each) => verified(each, secret))).not.toThrow();
  });

  it('follows no redirect and takes it for a failure', async () => {
    planner.answersWith({ status: 302, headers: { location: '/elsewhere' } });
    const { id: plannerId } = await register();
    const id = await sent(plannerId);
    await until(async () => (await read(id)).tries > 0);
    expect((await read(id)).attempts[0]).toMatchObject({ status: 302 });
    expect(planner.received.filter(({ path }) => path === '/elsewhere')).toEqual([]);
    await api.http.post(`/v1/planners/${plannerId}/pause`).expect(200);
  });

  it('stops a planner that is gone, and brings the dead one again when the maker says so', async () => {
    planner.answersWith({ status: 410 });
    const { id: plannerId } = await register();
    const id = await sent(plannerId);
    expect(await reaches(id, 'dead')).toMatchObject({ nextTryAt: null, attempts: [{ status: 410 }] });
    expect(await plannerState(plannerId)).toBe('stopped');
    const refused = await handOn(plannerId).expect(409);
    expectMatchesApi(refused);
    expect(refused.body.code).toBe('planner-stopped');
    expectMatchesApi(await api.http.post(`/v1/planners/${plannerId}/resume`).expect(200));
    const again = await api.http.post(`/v1/hand-offs/${id}/send-again`).expect(200);
    expectMatchesApi(again);
    expect(again.body.state).not.toBe('dead');
    expect(await reaches(id, 'arrived')).toMatchObject({ tries: 2 });
    expect(planner.receivedAs(id)).toHaveLength(2);
    const late = await api.http.post(`/v1/hand-offs/${id}/send-again`).expect(409);
    expectMatchesApi(late);
    expect(late.body.code).toBe('hand-off-not-dead');
  });

  it('leaves a planner alone that asks to slow down, for as long as it asks', async () => {
    planner.answersWith({ status: 429, headers: { 'retry-after': '3600' } });
    const { id: plannerId } = await register();
    const first = await sent(plannerId);
    const waiting = await until(async () => (await read(first)).tries === 1 && read(first));
    const due = Date.parse(waiting.nextTryAt) - Date.parse(waiting.attempts[0].at);
    expect(due).toBeGreaterThanOrEqual(3_600_000);
    // Another one waits too; one for another planner does not.
    const second = await sent(plannerId);
    const { id: other } = await register();
    await reaches(await sent(other), 'arrived');
    expect(await read(second)).toMatchObject({ state: 'waiting', tries: 0 });
    // The maker may say otherwise.
    await api.http.post(`/v1/planners/${plannerId}/resume`).expect(200);
    await reaches(first, 'arrived');
    await reaches(second, 'arrived');
  });

  it('waits while the planner is paused', async () => {
    const { id: plannerId } = await register();
    expectMatchesApi(await api.http.post(`/v1/planners/${plannerId}/pause`).expect(200));
    const id = await sent(plannerId);
    const { id: other } = await register();
    await reaches(await sent(other), 'arrived');
    expect(await read(id)).toMatchObject({ state: 'waiting', tries: 0 });
    await api.http.post(`/v1/planners/${plannerId}/resume`).expect(200);
    await reaches(id, 'arrived');
  });

  it('is refused before anything is sent when the planner lacks something, with the measures to take', async () => {
    const { measures } = exampleBody;
    const noNeck = {
      ...exampleBody,
      estimate: false,
      measures: measures.filter(({ name }) => name !== 'neck-base-girth'),
    };
    const lacking = await keepExampleSheet(api, noNeck);
    const required = ['assembled/neck-width', 'back/width', 'sleeve/cap-height'];
    const { id: plannerId } = await register({ takes: { required } });
    const before = planner.received.length;
    const refused = await api.http.post(`/v1/target-sheets/${lacking.id}/hand-offs`).send({ plannerId }).expect(422);
    expectMatchesApi(refused);
    expect(refused.body.code).toBe('planner-lacks');
    expect(refused.body.errors).toEqual([
      { detail: expect.stringMatching(/^assembled\/neck-width: .*Measure neck-base-girth\.$/) },
      { detail: expect.stringContaining('has no sleeve/cap-height') },
    ]);
    const preview = await api.http.get(`/v1/planners/${plannerId}/preview?targetSheet=${lacking.id}`).expect(422);
    expectMatchesApi(preview);
    expect(preview.body.errors).toEqual(refused.body.errors);
    expect(planner.received).toHaveLength(before);
    expect((await api.http.get(`/v1/hand-offs?planner=${plannerId}`)).body.items).toEqual([]);
  });

  it('is made once for one Idempotency-Key', async () => {
    const { id: plannerId } = await register();
    const key = 'a-key-of-mine';
    const answers = await Promise.all(Array.from({ length: 6 }, () => handOn(plannerId, key)));
    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201, 201]);
    const [first] = answers;
    const { id } = first?.body as { id: string };
    await reaches(id, 'arrived');
    const later = await handOn(plannerId, key).expect(201);
    for (const answer of [...answers, later]) expect(answer.body).toEqual(first?.body);
    const { id: other } = await register();
    const reused = await handOn(other, key).expect(422);
    expectMatchesApi(reused);
    expect(reused.body.code).toBe('idempotency-key-reused');
    expectMatchesApi(await handOn(other, 'two words').expect(400));
    expect(planner.receivedAs(id)).toHaveLength(1);
    const listed = await api.http.get(`/v1/hand-offs?planner=${plannerId}`).expect(200);
    expectMatchesApi(listed);
    expect(listed.body.items).toHaveLength(1);
  });

  it('can be written down together with the sheet it brings, or not at all', async () => {
    const { id: plannerId } = await register();
    const request = await keepExampleRecords(api);
    const made = await api.http
      .post(`/v1/planners/${plannerId}/hand-offs`)
      .set('Idempotency-Key', 'make-and-send')
      .send(request)
      .expect(201);
    expectMatchesApi(made);
    await reaches(made.body.id, 'arrived');
    await api.http.get(`/v1/target-sheets/${made.body.targetSheetId}`).expect(200);
    const again = await api.http
      .post(`/v1/planners/${plannerId}/hand-offs`)
      .set('Idempotency-Key', 'make-and-send')
      .send(request);
    expect(again.body).toEqual(made.body);

    const count = async () => (await api.http.get('/v1/target-sheets?limit=100')).body.items.length;
    const before = await count();
    const { id: picky } = await register({ takes: { required: ['sleeve/cap-height'] } });
    expectMatchesApi(await api.http.post(`/v1/planners/${picky}/hand-offs`).send(request).expect(422));
    expect(await count()).toBe(before);
  });

  it('brings a planner that takes sheets as such a link to pull', async () => {
    const { id: plannerId, secret } = await register({ takes: { format: 'sheet', unit: 'in' } });
    const id = await sent(plannerId);
    await reaches(id, 'arrived');
    const [received] = planner.receivedAs(id);
    const link = received && (verified(received, secret) as { id: string; url: string; etag: string });
    expect(link).toEqual({
      id: sheet.id,
      url: `https://easewright.example/v1/target-sheets/${sheet.id}?unit=in`,
      etag: expect.stringMatching(/^".+"$/),
    });
    const pulled = await api.http.get(new URL(link?.url ?? '').pathname + '?unit=in').expect(200);
    expect(pulled.headers['etag']).toBe(link?.etag);
    expect(pulled.body).toMatchObject({ unit: 'in', id: sheet.id });
  });

  it('brings CSV to a planner that takes columns', async () => {
    const names = { 'sheet/title': 'Name', 'back/width': 'Back, cm' };
    const { id: plannerId } = await register({ takes: { format: 'csv', unit: 'cm', roundingStep: 0.5, names } });
    const id = await sent(plannerId);
    await reaches(id, 'arrived');
    expect(planner.receivedAs(id)[0]).toMatchObject({
      body: 'Name,"Back, cm"\r\nGrey pullover,51\r\n',
      headers: { 'content-type': 'text/csv; charset=utf-8' },
    });
  });

  it('goes with its planner, and with its sheet', async () => {
    planner.answersWith({ status: 500 }, { status: 500 });
    const { id: plannerId } = await register();
    const id = await sent(plannerId);
    await until(async () => (await read(id)).tries > 0);
    await api.http.delete(`/v1/planners/${plannerId}`).expect(204);
    expectMatchesApi(await api.http.get(`/v1/hand-offs/${id}`).expect(404));
    const { id: other } = await register();
    const shortLived = await keepExampleSheet(api);
    const handOff = await api.http
      .post(`/v1/target-sheets/${shortLived.id}/hand-offs`)
      .send({ plannerId: other })
      .expect(201);
    await api.http.delete(`/v1/target-sheets/${shortLived.id}`).expect(204);
    expectMatchesApi(await api.http.get(`/v1/hand-offs/${handOff.body.id}`).expect(404));
  });

  it.runIf(kind === 'sqlite')('gives up on a planner that hangs, and lets others pass meanwhile', async () => {
    const hanging = await RealPlanner.start();
    hanging.answers(() => undefined);
    const { id: slow } = await register({ address: hanging.address });
    const held = await Promise.all(Array.from({ length: 20 }, () => sent(slow)));
    const { id: quick } = await register();
    await reaches(await sent(quick), 'arrived');
    expect(hanging.received.length).toBeLessThan(20);
    const [first = ''] = held;
    await until(async () => (await read(first)).tries > 0);
    expect((await read(first)).attempts[0]).toMatchObject({ status: null, failure: 'timed-out' });
    await api.http.delete(`/v1/planners/${slow}`).expect(204);
    await hanging.stop();
  });
});
