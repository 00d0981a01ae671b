import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tmpdir } from 'node:os';
import { pathToFileURL } from 'node:url';
import createClient from 'openapi-fetch';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { paths } from '../../apps/web/src/api.generated.ts';
import { runApp, type RunningApp } from '../support/app.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { readMessage } from '../support/http-message.ts';
import { expectAnswerMatches } from '../support/matches-api.ts';
import { RealPlanner } from '../support/real-planner.ts';
import { until } from '../support/until.ts';

const GUIDE = readFileSync('docs/for-planners.md', 'utf8');
const README = readFileSync('README.md', 'utf8');
const blocks = (language: string): string[] =>
  [...GUIDE.matchAll(new RegExp(`\`\`\`${language}\n(.*?)\`\`\``, 'gs'))].map(([, text = '']) => text.trim());

/** What the guide shows of an answer, as a pattern for all of it: … stands for anything, and fields may be left out. */
function shown(value: unknown): unknown {
  if (typeof value === 'string') return expect.stringMatching(asPattern(value));
  if (Array.isArray(value)) return expect.arrayContaining(value.map(shown));
  if (typeof value !== 'object' || value === null) return value;
  return expect.objectContaining(Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, shown(inner)])));
}
const asPattern = (text: string): RegExp =>
  new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll('…', '.+')}`);

describe('the guide for planners', () => {
  let api: RunningApp;
  let planner: RealPlanner;
  const known = new Map<string, string>();
  beforeAll(async () => {
    api = await runApp('sqlite', { HANDOFF_ALLOW: 'loopback' });
    planner = await RealPlanner.start();
    known.set('sheet', (await keepExampleSheet(api)).id).set('address', planner.address);
  });
  afterAll(async () => {
    await api.stop();
    await planner.stop();
  });

  const filled = (text: string): string =>
    text.replaceAll(/\{([a-z]+)\}/g, (whole, name: string) => known.get(name) ?? whole);

  it('shows requests and answers as they are', async () => {
    const messages = blocks('http').map((text) => readMessage(filled(text)));
    expect(messages.length).toBeGreaterThan(12);
    for (let index = 0; index < messages.length; index += 2) {
      // What an answer before gave may be needed here.
      const { first, headers, body } = readMessage(filled(blocks('http')[index] ?? ''));
      const answer = readMessage(filled(blocks('http')[index + 1] ?? ''));
      const [method = '', path = ''] = first.split(' ');
      const response = await fetch((await api.app.getUrl()) + path, { method, headers, body });
      const text = await response.text();
      expect(`${response.status} ${response.statusText}`, `${first}: ${text.slice(0, 300)}`).toBe(answer.first);
      for (const [name, value] of Object.entries(answer.headers))
        expect(response.headers.get(name), name).toMatch(asPattern(value));
      const type = response.headers.get('content-type') ?? '';
      expectAnswerMatches({ method, path: path.split('?')[0] ?? '', status: response.status, type, text });
      if (answer.body !== null) expect(JSON.parse(text), first).toEqual(shown(JSON.parse(answer.body)));
      remember(path, response, text);
    }
  });

  function remember(path: string, response: Response, text: string): void {
    const etag = response.headers.get('etag');
    if (etag !== null) known.set('etag', etag);
    const body = text.startsWith('{') ? (JSON.parse(text) as Record<string, string>) : {};
    if (path === '/v1/planners') known.set('planner', body['id'] ?? '').set('secret', body['secret'] ?? '');
    if (path === '/v1/read-keys') known.set('key', body['key'] ?? '');
  }

  it('shows what a planner is sent, and how it checks who sent it', async () => {
    const received = await until(() => Promise.resolve(planner.received.at(-1)));
    expect(JSON.parse(received.body)).toEqual(JSON.parse(blocks('json')[0] ?? ''));
    const folder = mkdtempSync(join(tmpdir(), 'easewright-guide-'));
    const file = join(folder, 'check.mjs');
    writeFileSync(file, blocks('js')[0] ?? '');
    const { isFromEasewright } = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as {
      isFromEasewright(secret: string, headers: object, body: string): boolean;
    };
    rmSync(folder, { recursive: true });
    const secret = known.get('secret') ?? '';
    expect(isFromEasewright(secret, received.headers, received.body)).toBe(true);
    expect(isFromEasewright(secret, received.headers, `${received.body} `)).toBe(false);
    // The test vector of Standard Webhooks 1.0.0.
    const vector = {
      'webhook-id': 'msg_p5jXN8AQM9LWM0D4loKWxJek',
      'webhook-timestamp': '1614265330',
      'webhook-signature': 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
    };
    expect(isFromEasewright('whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw', vector, '{"test": 2432232314}')).toBe(true);
  });

  it('can be walked by a client that a stock generator made', async () => {
    const client = createClient<paths>({ baseUrl: await api.app.getUrl() });
    const made = await client.POST('/v1/read-keys', { body: { title: 'Row by row' } });
    const headers = { authorization: `Bearer ${made.data?.key}` };
    const list = await client.GET('/v1/target-sheets', { headers, params: { query: { limit: 1 } } });
    const id = list.data?.items[0]?.id ?? '';
    const pulled = await client.GET('/v1/target-sheets/{id}', {
      headers,
      params: { path: { id }, query: { unit: 'cm' } },
    });
    expect(pulled.error).toBeUndefined();
    expect(typeof pulled.data === 'object' && pulled.data.unit).toBe('cm');
    const wrong = await client.GET('/v1/target-sheets/{id}', { headers, params: { path: { id: 'none' } } });
    expect(wrong.error?.code).toBe('not-found');
  });

  it('names no setting that is not one, and README names those it speaks of', () => {
    const settings = new Set([...GUIDE.matchAll(/`([A-Z]+_[A-Z_]+)`/g)].map(([, name = '']) => name));
    for (const name of settings) expect(README).toContain(`\`${name}\``);
  });

  it('is kept to by README’s own request', async () => {
    const curl = /```\ncurl -s (\S+) (.*?) -d '(.*?)'\n```/s.exec(README);
    const [, url = '', options = '', body = ''] = curl ?? [];
    const headers = [...options.matchAll(/-H '([^:]+): ([^']+)'/g)].map(
      ([, name = '', value = '']) => [name, value] as [string, string],
    );
    const response = await fetch((await api.app.getUrl()) + new URL(url).pathname, { method: 'POST', headers, body });
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toMatch(/^text\/plain/);
    expect(await response.text()).toMatch(/chest/i);
  });
});
