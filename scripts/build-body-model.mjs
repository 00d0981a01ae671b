#!/usr/bin/env node
/** Makes the body model's coefficients from the survey rows: `npm run build:body-model -- <folder with the rows> [file to write]`. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { runnerImport } from 'vite';

const [folder, out = fileURLToPath(new URL('../libs/body/src/model/coefficients.json', import.meta.url))] =
  process.argv.slice(2);
if (folder === undefined) {
  console.error('Which folder has the rows? npm run build:body-model -- <folder> [file to write]');
  process.exit(2);
}

/** The builder is TypeScript and uses the lib's own algebra; Vite runs both as they are, without a build before. */
const conditions = ['source', 'module', 'node', 'development|production'];
const load = async (file) =>
  (
    await runnerImport(fileURLToPath(new URL(file, import.meta.url)), {
      configFile: false,
      logLevel: 'error',
      environments: { inline: { resolve: { conditions } } },
    })
  ).module;

const { readAllRows } = await load('./body-model/survey-rows.ts');
const { buildModel } = await load('./body-model/build-model.ts');
const { modelText } = await load('./body-model/model-text.ts');

const text = modelText(buildModel(readAllRows(folder)));
writeFileSync(out, text);
console.log(`${out}: ${text.length} bytes, ${gzipSync(text).length} gzipped`);
