import { readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import ts from 'typescript';

const ROOT = resolve(import.meta.dirname, '../..');
/** The page's program holds every lib as well: whatever the page imports. */
const CONFIG = resolve(ROOT, 'apps/web/tsconfig.json');

/** A member added to one of the unions, in the text of the file that names them. */
export interface Addition {
  readonly file: string;
  readonly after: string;
  readonly text: string;
}

/** An error of the compiler, and the file it is in. */
interface Demand {
  readonly file: string;
  readonly message: string;
}

/** What the compiler asks for once the additions are made: one program over the sources, the changed files in memory alone. */
export function demandedByCompiler(additions: readonly Addition[]): Demand[] {
  const changed = textsWith(additions);
  const { config } = ts.readConfigFile(CONFIG, ts.sys.readFile) as { config: unknown };
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, dirname(CONFIG));
  const all = { ...options, noEmit: true, noErrorTruncation: true };
  const host = ts.createCompilerHost(all);
  const readFile = host.readFile.bind(host);
  host.readFile = (name) => changed.get(resolve(name)) ?? readFile(name);
  const program = ts.createProgram(fileNames, all, host);
  return ts.getPreEmitDiagnostics(program).map(({ file, messageText }) => ({
    file: file === undefined ? '' : relative(ROOT, file.fileName),
    message: ts.flattenDiagnosticMessageText(messageText, '\n'),
  }));
}

function textsWith(additions: readonly Addition[]): Map<string, string> {
  const texts = new Map<string, string>();
  for (const { file, after, text } of additions) {
    const path = resolve(ROOT, file);
    const before = texts.get(path) ?? readFileSync(path, 'utf8');
    if (!before.includes(after)) throw new Error(`${file} has no ${after} to add after.`);
    texts.set(path, before.replace(after, after + text));
  }
  return texts;
}
