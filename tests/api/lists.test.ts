import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleFabric, exampleRequest } from '../support/examples.ts';
import { document } from '../support/matches-api.ts';

const LISTS = Object.entries(document.paths).filter(([, { get }]) =>
  get?.parameters?.some(({ name }) => name === 'cursor'),
);

describe.each(DATABASES)('a list on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const keep = async (): Promise<{ id: string; updatedAt: string }> =>
    (await api.http.post('/v1/fabrics').send(exampleFabric).expect(201)).body;
  const linkOf = (header: string | undefined, rel: string): string | undefined =>
    new RegExp(`<([^>]+)>; rel="${rel}"`).exec(header ?? '')?.[1];
  const ids = (body: { items: { id: string }[] }): string[] => body.items.map(({ id }) => id);

  it('is followed by its links from page to page, each thing once, whatever is added meanwhile', async () => {
    const kept: string[] = [];
    for (let made = 0; made < 5; made++) kept.unshift((await keep()).id);
    const seen: string[] = [];
    let address: string | undefined = '/v1/fabrics?limit=2';
    while (address !== undefined) {
      const page = await api.http.get(address).expect(200);
      seen.push(...ids(page.body));
      const next = linkOf(page.headers['link'], 'next');
      expect(next === undefined).toBe(page.body.next === null);
      if (next !== undefined) expect(new URL(next, 'http://x').searchParams.get('cursor')).toBe(page.body.next);
      if (address.includes('cursor')) expect(linkOf(page.headers['link'], 'first')).toBe('/v1/fabrics?limit=2');
      address = next;
      await keep();
    }
    expect(seen).toEqual(kept);
  });

  it('since a time has what was changed then or later', async () => {
    const [old, changed] = [await keep(), await keep()];
    await new Promise((done) => setTimeout(done, 5));
    const put = { ...exampleFabric, title: 'Another' };
    const at = `/v1/fabrics/${changed.id}`;
    const after = (await api.http.put(at).set('If-Match', '"1"').send(put).expect(200)).body as { updatedAt: string };
    const since = async (time: string) =>
      ids((await api.http.get('/v1/fabrics').query({ since: time, limit: 100 }).expect(200)).body);
    expect(await since(after.updatedAt)).toEqual([changed.id]);
    expect(await since(old.updatedAt)).toEqual(expect.arrayContaining([old.id, changed.id]));
    expect(await since(after.updatedAt.replace('Z', '+01:00'))).toContain(old.id);
    expect(await since('2999-01-01T00:00:00Z')).toEqual([]);
  });

  it.each(LISTS)(
    'at %s takes a limit, a cursor and a time, and says what is wrong with them',
    async (path, { get }) => {
      expect(get?.parameters?.map(({ name }) => name)).toEqual(expect.arrayContaining(['limit', 'cursor', 'since']));
      for (const [parameter, value] of [
        ['limit', '0'],
        ['limit', 'many'],
        ['cursor', 'x'.repeat(65)],
        ['since', 'yesterday'],
        ['since', '2026-01-31'],
      ]) {
        const refused = await api.http
          .get(path)
          .query({ [parameter ?? '']: value })
          .expect(400);
        expect(refused.body.errors, `${parameter}=${value}`).toMatchObject([
          { parameter, detail: expect.stringMatching(/must be/) },
        ]);
      }
      expect((await api.http.get(path).query({ since: '2999-01-01T00:00:00Z' }).expect(200)).body).toEqual({
        items: [],
        next: null,
      });
    },
  );

  it('is what the others are: a run of sizes has no page', async () => {
    const { fabric, design } = exampleRequest;
    const request = { table: 'craft-yarn-council-woman', sizes: ['M'], fabric, design };
    const run = await api.http.post('/v1/target-sheets/run').send(request).expect(200);
    expect(Object.keys(run.body)).toEqual(['items']);
    expect(run.headers).not.toHaveProperty('link');
  });
});
