// The whole API, on a database in memory or as API_ENV says, for a bench to send requests to. To any message it answers with the processor
// time that it took and the memory that it holds once it has collected its garbage.
import { makeApp } from '../../dist/apps/api/src/app.js';

const env = JSON.parse(process.env.API_ENV ?? '{"SQLITE_FILE":":memory:"}');
const app = await makeApp({ PAGE_DIR: 'there-is-none', BACKUPS_KEPT: '0', ...env });
await app.listen(0, '127.0.0.1');
process.on('message', () => {
  globalThis.gc?.();
  process.send({ cpu: process.cpuUsage(), memory: process.memoryUsage() });
});
process.send(await app.getUrl());
