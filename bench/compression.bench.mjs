// POST of a stateless target sheet of some 66 kB, accepted compressed and not, of the same server by turns: throughput, and the processor
// time of the server, which other work on the machine disturbs less. Wanted: gzip and brotli at 0.9 of plain at least.
import { fork } from 'node:child_process';
import { once } from 'node:events';
import autocannon from 'autocannon';
import { ratioOf } from './support/alternate.mjs';
import { sheetRequest } from './support/sheet-request.mjs';

const ROUNDS = 15;
const SECONDS = 2;

const server = fork(new URL('./support/api-server.mjs', import.meta.url));
const [address] = await once(server, 'message');
const post = (coding) => ({
  url: `${address}/v1/target-sheets/compute`,
  method: 'POST',
  headers: { 'content-type': 'application/json', 'accept-encoding': coding },
  body: JSON.stringify(sheetRequest),
});

async function processorTime() {
  server.send('how much?');
  const [{ cpu }] = await once(server, 'message');
  return cpu.user + cpu.system;
}

/** Answers a second, and answers a second of processor time. */
async function turn(coding) {
  const before = await processorTime();
  const { requests, duration, non2xx, errors } = await autocannon({
    ...post(coding),
    connections: 8,
    duration: SECONDS,
  });
  if (non2xx + errors > 0) throw new Error(`${coding}: ${non2xx + errors} requests were refused`);
  const processorSeconds = ((await processorTime()) - before) / 1e6;
  return { rate: requests.total / duration, perCpu: requests.total / processorSeconds };
}

try {
  for (const coding of ['identity', 'gzip', 'br']) await autocannon({ ...post(coding), connections: 8, amount: 3000 });
  for (const coding of ['gzip', 'br']) {
    const { url, ...request } = post(coding);
    const bytes = (await (await fetch(url, request)).arrayBuffer()).byteLength;
    console.log(`a sheet of ${Math.round(bytes / 1000)} kB, ${coding}, medians of ${ROUNDS} turns (wanted: 0.90)`);
    const turns = { ours: [], plain: [] };
    for (let round = 0; round < ROUNDS; round++) {
      turns.ours.push(await turn(coding));
      turns.plain.push(await turn('identity'));
    }
    for (const [what, name] of [
      ['throughput', 'rate'],
      ['answers by processor time', 'perCpu'],
    ]) {
      const [ours, plain] = [turns.ours.map((each) => each[name]), turns.plain.map((each) => each[name])];
      const { ours: ourMedian, bare, ratio } = ratioOf(ours, plain);
      console.log(`  ${what}: ${ourMedian.toFixed(0)}/s, plain ${bare.toFixed(0)}/s, ratio ${ratio.toFixed(2)}`);
    }
  }
} finally {
  server.kill();
}
