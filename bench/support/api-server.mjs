// The whole API on a database in memory, for a bench to send requests to.
import { makeApp } from '../../dist/apps/api/src/app.js';

const app = await makeApp({ SQLITE_FILE: ':memory:', PAGE_DIR: 'there-is-none' });
await app.listen(0, '127.0.0.1');
process.send(await app.getUrl());
