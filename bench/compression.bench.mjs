// POST of a stateless target sheet of about 42 kB, accepted compressed and not, of the same server: throughput by turns. Wanted: gzip
// and brotli at 0.9 of plain at least.
import { fork } from 'node:child_process';
import { once } from 'node:events';
import autocannon from 'autocannon';
import { alternate } from './support/alternate.mjs';
import { sheetRequest } from './support/sheet-request.mjs';

const ROUNDS = 7;
const SECONDS = 3;

const server = fork(new URL('./support/api-server.mjs', import.meta.url));
const [address] = await once(server, 'message');
const post = (coding) => ({
  url: `${address}/v1/target-sheets/compute`,
  method: 'POST',
  headers: { 'content-type': 'application/json', 'accept-encoding': coding },
  body: JSON.stringify(sheetRequest),
});

async function throughput(coding) {
  const { requests, non2xx, errors } = await autocannon({ ...post(coding), connections: 8, duration: SECONDS });
  if (non2xx + errors > 0) throw new Error(`${coding}: ${non2xx + errors} requests were refused`);
  return requests.average;
}

try {
  for (const coding of ['identity', 'gzip', 'br']) await autocannon({ ...post(coding), connections: 8, amount: 3000 });
  for (const coding of ['gzip', 'br']) {
    const { url, ...request } = post(coding);
    const bytes = (await (await fetch(url, request)).arrayBuffer()).byteLength;
    const result = await alternate(
      ROUNDS,
      () => throughput(coding),
      () => throughput('identity'),
    );
    console.log(
      `a sheet of ${Math.round(bytes / 1000)} kB, ${coding}: ${result.ours.toFixed(0)}/s, plain ${result.bare.toFixed(0)}/s`,
    );
    console.log(`  ratio ${result.ratio.toFixed(2)} (wanted: 0.90), median of ${ROUNDS} turns`);
  }
} finally {
  server.kill();
}
