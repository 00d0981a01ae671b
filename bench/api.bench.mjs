// POST of a stateless target sheet with 12 measurements, against a bare NestJS endpoint with the same DTO and pipe that serialises the
// same object: throughput by turns, each server in a process of its own. Wanted: a ratio of at least 0.75.
import { fork } from 'node:child_process';
import { once } from 'node:events';
import autocannon from 'autocannon';
import { alternate } from './support/alternate.mjs';
import { sheetRequest } from './support/sheet-request.mjs';

const ROUNDS = 7;
const SECONDS = 3;
const post = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(sheetRequest) };

async function serve(file, message) {
  const server = fork(new URL(file, import.meta.url));
  if (message !== undefined) server.send(message);
  const [address] = await once(server, 'message');
  return { server, url: `${address}/v1/target-sheets/compute` };
}

async function throughput(url) {
  const { requests, non2xx, errors } = await autocannon({ url, ...post, connections: 8, duration: SECONDS });
  if (non2xx + errors > 0) throw new Error(`${url} refused ${non2xx + errors} requests`);
  return requests.average;
}

/** So many requests, however long they take, that what runs is compiled. */
const warm = (url) => autocannon({ url, ...post, connections: 8, amount: 4000 });

const ours = await serve('./support/api-server.mjs');
const sheet = await (await fetch(ours.url, post)).json();
const bare = await serve('./support/bare-server.mjs', sheet);
try {
  await warm(ours.url);
  await warm(bare.url);
  const result = await alternate(
    ROUNDS,
    () => throughput(ours.url),
    () => throughput(bare.url),
  );
  const size = Math.round(JSON.stringify(sheet).length / 1000);
  console.log(`a stateless sheet (${size} kB): ${result.ours.toFixed(0)}/s, bare endpoint ${result.bare.toFixed(0)}/s`);
  console.log(`  ratio ${result.ratio.toFixed(2)} (wanted: 0.75), median of ${ROUNDS} turns`);
} finally {
  ours.server.kill();
  bare.server.kill();
}
