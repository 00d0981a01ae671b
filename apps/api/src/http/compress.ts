import { constants } from 'node:zlib';
import compression from 'compression';

/** Nothing smaller is compressed: it fits into a packet or two as it is. */
const LEAST_BYTES = 2048;

/**
 * Compresses answers for those who accept it, at the least effort: `npm run bench -- compression` says what a sheet costs so. The
 * page's own files were compressed at build.
 */
export const compress = compression({
  threshold: LEAST_BYTES,
  level: constants.Z_BEST_SPEED,
  brotli: { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MIN_QUALITY } },
});
