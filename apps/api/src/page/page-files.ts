import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Codings that the build has written a file in beside the plain one, the better first, with their suffixes. */
const SUFFIXES = { br: '.br', gzip: '.gz' } as const;
type Coding = keyof typeof SUFFIXES;

/** A file of the built page. */
export interface PageFile {
  readonly file: string;
  /** The same file compressed at build, by coding, the better first. */
  readonly compressed: ReadonlyMap<Coding, string>;
  /** Of the plain file; null where its name holds a hash of its content. */
  readonly hash: string | null;
}

/** The files of the built page by their addresses, `/` among them; none where no page has been built. */
export function pageFiles(folder: string): ReadonlyMap<string, PageFile> {
  const names = new Set(namesIn(folder));
  const plain = [...names].filter((name) => !Object.values(SUFFIXES).some((suffix) => name.endsWith(suffix)));
  const files = new Map(plain.map((name) => [`/${name}`, pageFile(folder, name, names)]));
  const start = files.get('/index.html');
  if (start === undefined) return new Map();
  files.delete('/index.html');
  return files.set('/', start);
}

function namesIn(folder: string): string[] {
  try {
    const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    return entries.map(({ parentPath, name }) => relative(folder, join(parentPath, name)).split(sep).join('/'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}

function pageFile(folder: string, name: string, names: ReadonlySet<string>): PageFile {
  const compressed = Object.entries(SUFFIXES)
    .filter(([, suffix]) => names.has(name + suffix))
    .map(([coding, suffix]) => [coding as Coding, join(folder, name + suffix)] as const);
  const file = join(folder, name);
  const hash = name.startsWith('assets/') ? null : hashOf(readFileSync(file));
  return { file, compressed: new Map(compressed), hash };
}

const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('base64url').slice(0, 22);
