import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { signWebhook } from '../../apps/api/src/hand-off/signing/sign-webhook.ts';
import { runApp, type RunningApp } from '../support/app.ts';
import { readMessage, writeMessage, type HttpMessage } from '../support/http-message.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { expectAnswerMatches } from '../support/matches-api.ts';
import { RealPlanner } from '../support/real-planner.ts';
import { RecordedValues } from '../support/recorded-values.ts';
import { until } from '../support/until.ts';

const FOLDER = 'docs/for-planners';
const FILES = readdirSync(FOLDER).sort();
/** `npm run examples` writes the files again instead of comparing them. */
const RECORDING = process.env['RECORD_EXAMPLES'] !== undefined;

/** The headers of an answer that concern a planner. */
const SHOWN = ['Content-Type', 'Cache-Control', 'ETag', 'Location', 'Link', 'WWW-Authenticate'];
const SHOWN_OF_PUSH = ['Content-Type', 'webhook-id', 'webhook-timestamp', 'webhook-signature'];

/** Sentences may be worded anew at any time; each has a code beside it. */
const SENTENCES = new Set(['advice', 'text', 'term', 'from', 'source']);

/** The numbers of a sheet that a planner works with. */
const MEASURES = new Set(['value', 'make', 'thickness']);

interface Exchange {
  readonly request: HttpMessage;
  readonly answer: HttpMessage;
}

function exchangeIn(file: string): Exchange {
  const [request = '', answer = ''] = readFileSync(join(FOLDER, file), 'utf8').split(/\n(?=HTTP\/1\.1 )/);
  return { request: readMessage(request), answer: readMessage(answer) };
}

describe('the recorded examples', () => {
  let api: RunningApp;
  let url: string;
  let planner: RealPlanner;
  let received = 0;
  let secret = '';
  const values = new RecordedValues();
  beforeAll(async () => {
    api = await runApp('sqlite', { HANDOFF_ALLOW: 'loopback' });
    url = await api.app.getUrl();
    planner = await RealPlanner.start();
    await keepExampleSheet(api);
    values.bind('http://127.0.0.1:4114', url);
    values.bind('https://planner.example', new URL(planner.address).origin);
  });
  afterAll(async () => {
    await api.stop();
    await planner.stop();
  });

  it.each(FILES)('%s is so', async (file) => {
    const recorded = exchangeIn(file);
    const now = file.includes('-received-') ? await push(recorded) : await ask(recorded);
    if (RECORDING) writeFileSync(join(FOLDER, file), `${writeMessage(now.request)}\n${writeMessage(now.answer)}`);
    else expect(comparable(now)).toEqual(comparable(recorded));
  });

  /** Sends the request as it was recorded. */
  async function ask({ request, answer }: Exchange): Promise<Exchange> {
    const [method = '', path = ''] = values.asNow(request.first).split(' ');
    const headers = Object.entries(request.headers).map(([name, value]) => [name, values.asNow(value)] as const);
    const body = request.body === null ? null : values.asNow(request.body);
    const response = await fetch(url + path, { method, headers: Object.fromEntries(headers), body });
    const text = await response.text();
    const type = response.headers.get('content-type') ?? '';
    expectAnswerMatches({ method, path: path.split('?')[0] ?? '', status: response.status, type, text });
    const first = `HTTP/1.1 ${response.status} ${response.statusText}`;
    return { request, answer: asRecorded({ first, body: text }, response.headers, SHOWN, answer) };
  }

  /** Takes the next push, and signs what is recorded of it with the secret that was recorded. */
  async function push({ request, answer }: Exchange): Promise<Exchange> {
    const got = await until(() => Promise.resolve(planner.received[received]));
    received++;
    const headers = new Headers(got.headers as Record<string, string>);
    const pushed = asRecorded({ first: `POST ${got.path}`, body: got.body }, headers, SHOWN_OF_PUSH, request);
    const { 'webhook-id': id = '', 'webhook-timestamp': timestamp } = pushed.headers;
    const signed = { ...pushed.headers, ...signWebhook(id, Number(timestamp), pushed.body ?? '', [secret]) };
    return { request: { ...pushed, headers: signed }, answer };
  }

  function asRecorded(
    { first, body }: Pick<HttpMessage, 'first' | 'body'>,
    headers: Headers,
    shown: readonly string[],
    recorded: HttpMessage,
  ): HttpMessage {
    const present = shown.flatMap((name) => {
      const value = headers.get(name);
      return value === null ? [] : [[name, value] as const];
    });
    const isJson = /json/.test(headers.get('content-type') ?? '');
    // Ids and links are in the body first, then in the headers.
    const text = isJson ? jsonAsRecorded(body ?? '', recorded.body) : values.asRecorded(body ?? '').trim();
    return {
      first,
      headers: values.dataAsRecorded(Object.fromEntries(present), recorded.headers) as Record<string, string>,
      body: text === '' ? null : text,
    };
  }

  function jsonAsRecorded(text: string, recorded: string | null): string {
    const data = values.dataAsRecorded(JSON.parse(text), JSON.parse(recorded ?? '{}')) as { secret?: unknown };
    if (typeof data.secret === 'string') ({ secret } = data as { secret: string });
    return JSON.stringify(data);
  }
});

/** Both messages without sentences; of a sheet no numbers but its measures, since what is estimated moves with the model. */
function comparable({ request, answer }: Exchange): object {
  return { request: comparableMessage(request), answer: comparableMessage(answer) };
}

function comparableMessage({ first, headers, body }: HttpMessage): object {
  if (body?.startsWith('{') !== true) return { first, headers, body };
  const isSheet = 'assembled' in (JSON.parse(body) as object);
  return { first, headers, body: JSON.parse(body, (key, value) => comparableField(key, value, isSheet)) as object };
}

function comparableField(key: string, value: unknown, isSheet: boolean): unknown {
  if (typeof value === 'number') return isSheet && !MEASURES.has(key) ? '#' : Number(value.toPrecision(9));
  return SENTENCES.has(key) && typeof value === 'string' ? '…' : value;
}
