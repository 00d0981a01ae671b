import { DataSource } from 'typeorm';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleFabric } from '../support/examples.ts';

const MARK = 'a yarn named nowhere else';

describe.each(DATABASES)('a fault of the service on %s', (kind) => {
  let api: RunningApp;
  let written: string;
  beforeAll(async () => {
    api = await runApp(kind);
    await api.app.get(DataSource).query('DROP TABLE fabric');
    written = '';
    for (const stream of [process.stdout, process.stderr]) {
      vi.spyOn(stream, 'write').mockImplementation((text) => {
        written += String(text);
        return true;
      });
    }
  });
  afterEach(() => vi.restoreAllMocks());
  afterAll(() => api.stop());

  it('is answered with a problem document, and its place is logged but nothing that was entered', async () => {
    const response = await api.http.post('/v1/fabrics').send({ ...exampleFabric, title: MARK });
    expect(response.status).toBe(500);
    expect(response.body).toMatchObject({ status: 500, code: 'fault' });
    expect(written).toContain('QueryFailedError');
    expect(`${written} ${response.text}`).not.toMatch(new RegExp(`${MARK}|INSERT|fabric"`));
  });
});
