import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TargetSheet } from '#target-sheet';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { expectMatchesApi } from '../support/matches-api.ts';

describe.each(DATABASES)('reading a sheet in, on %s', (kind) => {
  let api: RunningApp;
  let elsewhere: RunningApp;
  let sheet: TargetSheet;
  beforeAll(async () => {
    api = await runApp(kind);
    elsewhere = await runApp('sqlite');
    const { id } = await keepExampleSheet(elsewhere);
    sheet = (await elsewhere.http.get(`/v1/target-sheets/${id}`)).body;
  });
  afterAll(async () => {
    await api.stop();
    await elsewhere.stop();
  });
  const readIn = (json: unknown) => api.http.post('/v1/target-sheets/import').send(json as object);
  const otherId = (last: string) => sheet.id.slice(0, -4) + last;

  it('loses nothing', async () => {
    const made = await readIn(sheet).expect(201);
    expectMatchesApi(made);
    expect(made.headers['location']).toBe(`/v1/target-sheets/${sheet.id}`);
    const text = (await elsewhere.http.get(`/v1/target-sheets/${sheet.id}`)).text;
    const read = await api.http.get(`/v1/target-sheets/${sheet.id}`).expect(200);
    expect(read.text).toBe(text);
    const csv = (from: RunningApp) => from.http.get(`/v1/target-sheets/${sheet.id}`).set('Accept', 'text/csv');
    expect((await csv(api)).text).toBe((await csv(elsewhere)).text);
  });

  it('keeps the same sheet once, and refuses another with its id', async () => {
    await readIn({ ...sheet, id: otherId('aaaa') }).expect(201);
    const again = await readIn({ ...sheet, id: otherId('aaaa') }).expect(200);
    expectMatchesApi(again);
    const refused = await readIn({ ...sheet, id: otherId('aaaa'), title: 'Another' }).expect(409);
    expectMatchesApi(refused);
    expect(refused.body.code).toBe('sheet-differs');
  });

  it('lists it, and says that what it was made from is not known', async () => {
    await readIn({ ...sheet, id: otherId('bbbb'), title: 'From afar' }).expect(201);
    const list = await api.http.get('/v1/target-sheets').expect(200);
    expectMatchesApi(list);
    expect(list.body.items).toContainEqual(
      expect.objectContaining({ title: 'From afar', construction: 'drop-shoulder' }),
    );
    const inputs = await api.http.get(`/v1/target-sheets/${otherId('bbbb')}/inputs`).expect(200);
    expectMatchesApi(inputs);
    expect(inputs.body).toMatchObject({ request: null, body: null, garment: null, fabric: null });
    expectMatchesApi(await api.http.get('/v1/export').expect(200));
  });

  it('reads a newer minor version with what is new in it', async () => {
    const newer = { ...sheet, id: otherId('cccc'), version: '1.7', yarnDreams: { colour: 'moss' } };
    await readIn(newer).expect(201);
    expect((await api.http.get(`/v1/target-sheets/${newer.id}`)).body).toEqual(newer);
  });

  it('refuses a newer major version in a clear line', async () => {
    const refused = await readIn({ ...sheet, id: otherId('dddd'), version: '2.0' }).expect(422);
    expectMatchesApi(refused);
    expect(refused.body).toMatchObject({ code: 'sheet-version-too-new', errors: [{ pointer: '/version' }] });
    expect(refused.body.detail).toMatch(/version 2\.0/);
  });

  it.each([
    ['no sheet', { hello: 'there' }, 'sheet-format-unknown'],
    ['a list', [], 'unreadable'],
    ['half a sheet', { format: 'easewright/target-sheet', version: '1.0' }, 'sheet-invalid'],
  ])('refuses %s', async (_what, json, code) => {
    const refused = await readIn(json);
    expectMatchesApi(refused);
    expect(refused.status).toBeGreaterThanOrEqual(400);
    expect(refused.status).toBeLessThan(500);
    expect([code, 'sheet-format-unknown']).toContain(refused.body.code);
  });

  it('refuses what cannot be kept: an id that is none, a day that is none', async () => {
    expect((await readIn({ ...sheet, id: 'mine' }).expect(422)).body.errors[0].pointer).toBe('/id');
    const noDay = { ...sheet, id: otherId('eeee'), createdAt: '2026-99-99T00:00:00Z' };
    expect((await readIn(noDay).expect(422)).body.errors[0].pointer).toBe('/createdAt');
  });

  it('reads sheets that are larger than what a maker enters, up to a limit', async () => {
    const notes = Array.from({ length: 400 }, (_, index) => ({ code: `n-${index}`, text: 'long '.repeat(40) }));
    const large = { ...sheet, id: otherId('ffff'), notes };
    expect(JSON.stringify(large).length).toBeGreaterThan(64 * 1024);
    await readIn(large).expect(201);
    expectMatchesApi(await readIn({ ...large, notes: Array.from({ length: 10 }, () => notes).flat() }).expect(413));
  });

  it('takes every construction there and back', async () => {
    for (const construction of ['squared-drop', 'set-in', 'raglan']) {
      const request = (await elsewhere.http.get(`/v1/target-sheets/${sheet.id}/inputs`)).body.request;
      const computed = await elsewhere.http
        .post('/v1/target-sheets/compute')
        .send({ ...request, unit: 'in', design: { ...request.design, construction } })
        .expect(200);
      await readIn(computed.body).expect(201);
      expect((await api.http.get(`/v1/target-sheets/${computed.body.id}`)).text, construction).toBe(computed.text);
    }
  });
});
