import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { CHROMIUM, inBrowser } from './support/chromium.ts';

inBrowser('a page of another origin', () => {
  let pages: Server;
  let browser: Browser;
  let origin: string;
  beforeAll(async () => {
    pages = createServer((_request, response) => response.end('<!doctype html><title>A planner</title>'));
    await new Promise<void>((done) => pages.listen(0, '127.0.0.1', done));
    origin = `http://127.0.0.1:${(pages.address() as AddressInfo).port}`;
    browser = await chromium.launch({ executablePath: CHROMIUM ?? '', args: ['--no-sandbox'] });
  });
  afterAll(async () => {
    await browser.close();
    await new Promise((done) => pages.close(done));
  });

  /** What a script of the page reads at an address, with the key or without; null where the browser does not let it. */
  async function readBy(
    api: RunningApp,
    path: string,
    key?: string,
  ): Promise<{ status: number; etag: string | null } | null> {
    const page = await browser.newPage();
    try {
      await page.goto(origin);
      return await page.evaluate(
        async ([url, authorization]) => {
          try {
            const response = await fetch(url ?? '', authorization ? { headers: { authorization } } : {});
            return { status: response.status, etag: response.headers.get('etag') };
          } catch {
            return null;
          }
        },
        [(await api.app.getUrl()) + path, key && `Bearer ${key}`],
      );
    } finally {
      await page.close();
    }
  }
  async function withKey(more: Record<string, string>) {
    const api = await runApp('sqlite', more);
    const { id } = await keepExampleSheet(api);
    const { key } = (await api.http.post('/v1/read-keys').send({ title: 'A planner' }).expect(201)).body as {
      key: string;
    };
    return { api, key, sheet: `/v1/target-sheets/${id}` };
  }

  it('that is allowed pulls with a read key, and reads nothing without one', async () => {
    const { api, key, sheet } = await withKey({ ALLOWED_ORIGINS: `https://planner.example, ${origin}` });
    expect(await readBy(api, sheet, key)).toEqual({ status: 200, etag: expect.stringMatching(/^"/) });
    expect(await readBy(api, '/v1/target-sheets', key)).toMatchObject({ status: 200 });
    expect(await readBy(api, sheet, 'easewright_wrong')).toMatchObject({ status: 401 });
    expect(await readBy(api, sheet)).toBeNull();
    expect(await readBy(api, '/v1/bodies', key)).toBeNull();
    expect(await readBy(api, `${sheet}/inputs`, key)).toBeNull();
    await api.stop();
  });

  it('that is not allowed reads nothing, key or not', async () => {
    const { api, key, sheet } = await withKey({});
    expect(await readBy(api, sheet, key)).toBeNull();
    expect(await readBy(api, sheet)).toBeNull();
    await api.stop();
  });
});
