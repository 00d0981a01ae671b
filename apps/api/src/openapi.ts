import { writeFileSync } from 'node:fs';
import { makeApp } from './app.ts';
import { openApiDocument } from './docs/open-api-document.ts';

// Writes the OpenAPI document to the file named: `npm run openapi`.
const [file] = process.argv.slice(2);
if (file === undefined) throw new Error('Name the file to write.');
const app = await makeApp({ SQLITE_FILE: ':memory:' });
await app.init();
writeFileSync(file, `${JSON.stringify(openApiDocument(app), null, 2)}\n`);
await app.close();
