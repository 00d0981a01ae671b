import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

const TEXT = /\.(?:html|js|css|svg|json)$/;

/** A smaller file fits into one packet as it is. */
const LEAST_BYTES = 1024;

const brotli = (bytes: Buffer): Buffer =>
  brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY } });
const gzip = (bytes: Buffer): Buffer => gzipSync(bytes, { level: constants.Z_BEST_COMPRESSION });

/** Writes every text of the built page a second and a third time, in brotli and gzip, so that serving it compresses nothing. */
export function compressAssets(): Plugin {
  let folder = '';
  return {
    name: 'compress-assets',
    apply: 'build',
    configResolved: ({ root, build }) => void (folder = resolve(root, build.outDir)),
    closeBundle() {
      for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
        if (!TEXT.test(name)) continue;
        const file = join(folder, name);
        const bytes = readFileSync(file);
        if (bytes.length < LEAST_BYTES) continue;
        writeFileSync(`${file}.br`, brotli(bytes));
        writeFileSync(`${file}.gz`, gzip(bytes));
      }
    },
  };
}
