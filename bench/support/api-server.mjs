// The whole API on a database in memory, for a bench to send requests to. Asked for it by a message, it says how much processor time it took.
import { makeApp } from '../../dist/apps/api/src/app.js';

const app = await makeApp({ SQLITE_FILE: ':memory:', PAGE_DIR: 'there-is-none' });
await app.listen(0, '127.0.0.1');
process.send(await app.getUrl());
process.on('message', () => process.send(process.cpuUsage()));
