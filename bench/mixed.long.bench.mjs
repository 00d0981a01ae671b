// Minutes of mixed load (MINUTES, 10 without) at 70 % of what the API can do: no error, memory within 5 %, and the 99th percentile of how long an
// answer takes. On SQLite; instead on PostgreSQL where DATABASE_URL names an empty database, there also what a second process beside it adds.
import { fork } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import autocannon from 'autocannon';
import { ratioOf } from './support/alternate.mjs';
import { sheetRequest } from './support/sheet-request.mjs';

const MINUTES = Number(process.env.MINUTES ?? 10);
/** The minutes in which what runs is compiled and caches fill. */
const WARM_MINUTES = 2;
const SHARE_OF_MOST = 0.7;
const CONNECTIONS = 16;
const ROUNDS = 5;

async function serve(env) {
  const process_ = fork(new URL('./support/api-server.mjs', import.meta.url), {
    env: { ...process.env, API_ENV: JSON.stringify(env) },
  });
  const [url] = await once(process_, 'message');
  return { process_, url };
}

async function memoryOf({ process_ }) {
  process_.send('how much?');
  const [{ memory }] = await once(process_, 'message');
  return memory;
}

async function keep(url, path, body) {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(url + path, { method: 'POST', headers, body: JSON.stringify(body) });
  if (!response.ok) throw new Error(await response.text());
  return (await response.json()).id;
}

/** Of 40 requests: 16 compute a sheet, 8 read, 8 list, 4 make a record, 3 change one, 1 keeps a sheet. */
async function mixture(url) {
  const { body, fabric, design } = sheetRequest;
  const ids = { bodyId: await keep(url, '/v1/bodies', body), fabricId: await keep(url, '/v1/fabrics', fabric) };
  const sheetId = await keep(url, '/v1/target-sheets', { ...ids, design });
  const json = (method, path, content, headers = {}) => ({
    method,
    path,
    body: JSON.stringify(content),
    headers: { 'content-type': 'application/json', ...headers },
  });
  const kinds = [
    [16, json('POST', '/v1/target-sheets/compute', sheetRequest)],
    [4, { method: 'GET', path: `/v1/bodies/${ids.bodyId}` }],
    [4, { method: 'GET', path: `/v1/target-sheets/${sheetId}?unit=in` }],
    [4, { method: 'GET', path: '/v1/bodies?limit=20' }],
    [4, { method: 'GET', path: '/v1/target-sheets?limit=20' }],
    [4, json('POST', '/v1/bodies', body)],
    [3, json('PUT', `/v1/fabrics/${ids.fabricId}`, fabric, { 'if-match': '*' })],
    [1, json('POST', '/v1/target-sheets', { ...ids, design })],
  ];
  // Spread evenly, so that each connection meets every kind soon.
  const all = kinds.flatMap(([count, request]) =>
    Array.from({ length: count }, (_, index) => ({ at: (index + 0.5) / count, request })),
  );
  return all.sort((a, b) => a.at - b.at).map(({ request }) => request);
}

async function run(servers, requests, seconds, overallRate) {
  const rate = overallRate && Math.max(CONNECTIONS, Math.round(overallRate / servers.length));
  const results = await Promise.all(
    servers.map(({ url }) =>
      autocannon({
        url,
        requests,
        connections: CONNECTIONS,
        duration: seconds,
        ...(rate && { overallRate: rate }),
      }),
    ),
  );
  const sum = (of) => results.reduce((total, result) => total + of(result), 0);
  return {
    rate: sum(({ requests: { average } }) => average),
    count: sum(({ requests: { total } }) => total),
    failures: failuresOf(results),
    p50: Math.max(...results.map(({ latency }) => latency.p50)),
    p99: Math.max(...results.map(({ latency }) => latency.p99)),
  };
}

/** How many answers of each status that refuses, connections that broke and answers that took ten seconds or more. */
function failuresOf(results) {
  const failures = {};
  const add = (kind, count) => {
    if (count > 0) failures[kind] = (failures[kind] ?? 0) + count;
  };
  for (const { statusCodeStats, errors, timeouts } of results) {
    for (const [status, { count }] of Object.entries(statusCodeStats)) if (status >= '300') add(status, count);
    add('connection', errors - timeouts); // autocannon counts the time-outs as errors, too
    add('time-out', timeouts);
  }
  return failures;
}

function written(runs) {
  const total = {};
  for (const { failures } of runs)
    for (const [kind, count] of Object.entries(failures)) total[kind] = (total[kind] ?? 0) + count;
  return (
    Object.entries(total)
      .map(([kind, count]) => `${kind}: ${count}`)
      .join(', ') || 'none'
  );
}

const megabytes = (bytes) => Math.round(bytes / 1e6);

async function endure(kind, server) {
  const requests = await mixture(server.url);
  await run([server], requests, 20);
  const most = await run([server], requests, 20);
  const minutes = [];
  for (let minute = 0; minute < MINUTES; minute++) {
    const result = await run([server], requests, 60, most.rate * SHARE_OF_MOST);
    minutes.push({ ...result, memory: await memoryOf(server) });
  }
  const [first, last] = [minutes[Math.min(WARM_MINUTES, MINUTES) - 1], minutes.at(-1)];
  const grown = (of) => `${(((of(last.memory) - of(first.memory)) / of(first.memory)) * 100).toFixed(1)} %`;
  const live = ({ heapUsed, external }) => heapUsed + external;
  console.log(`${kind}: at most ${most.rate.toFixed(0)}/s; ${MINUTES} minutes at ${last.rate.toFixed(0)}/s`);
  const count = [most, ...minutes].reduce((total, each) => total + each.count, 0);
  console.log(`  refused or failed of ${count}: ${written([most, ...minutes])} (wanted: none)`);
  console.log(
    `  an answer takes ${last.p50} ms (median), ${Math.max(...minutes.map(({ p99 }) => p99))} ms (99 %, worst minute)`,
  );
  console.log(
    `  memory since minute ${WARM_MINUTES}: resident ${megabytes(first.memory.rss)} → ${megabytes(last.memory.rss)} MB, ${grown(({ rss }) => rss)}; in use ${megabytes(live(first.memory))} → ${megabytes(live(last.memory))} MB, ${grown(live)} (wanted: 5 % at most)`,
  );
  return requests;
}

const folder = mkdtempSync(join(tmpdir(), 'easewright-mixed-'));
const servers = [];
const start = async (env) => {
  servers.push(await serve(env));
  return servers.at(-1);
};
try {
  const { DATABASE_URL } = process.env;
  if (!DATABASE_URL) await endure('SQLite', await start({ DATA_DIR: folder }));
  else {
    const env = { DATABASE_URL, HANDOFF_KEY: randomBytes(32).toString('base64') };
    const one = await start(env);
    const requests = await endure('PostgreSQL', one);
    const two = await start(env);
    await run([two], requests, 20);
    const turns = { both: [], one: [] };
    for (let round = 0; round < ROUNDS; round++) {
      turns.both.push(await run([one, two], requests, 10));
      turns.one.push(await run([one], requests, 10));
    }
    const rates = (runs) => runs.map(({ rate }) => rate);
    const { ours, bare, ratio } = ratioOf(rates(turns.both), rates(turns.one));
    console.log(
      `  two processes: ${ours.toFixed(0)}/s, one ${bare.toFixed(0)}/s, ratio ${ratio.toFixed(2)}, median of ${ROUNDS} turns; refused or failed: ${written([...turns.both, ...turns.one])}`,
    );
  }
} finally {
  for (const { process_ } of servers) process_.kill();
  rmSync(folder, { recursive: true, force: true });
}
