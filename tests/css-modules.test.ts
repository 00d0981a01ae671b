import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const SOURCE = fileURLToPath(new URL('../apps/web/src', import.meta.url));
const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' }).map((file) => join(SOURCE, file));
const modules = files.filter((file) => file.endsWith('.module.css'));

const classesOf = (module: string): Set<string> =>
  new Set(
    [
      ...readFileSync(module, 'utf8')
        .replace(/\/\*.*?\*\//gs, '')
        .matchAll(/\.([a-z]\w*)(?=[\s,.:>{[])/gi),
    ].map(([, name]) => name!),
  );

/** What the components take of each module: its classes by name, `*` where the name is computed. */
const used = new Map<string, Set<string>>(modules.map((module) => [module, new Set()]));
for (const file of files.filter((name) => name.endsWith('.tsx'))) {
  const text = readFileSync(file, 'utf8');
  for (const [, variable, path] of text.matchAll(/^import (\w+) from '([^']+\.module\.css)'/gm)) {
    const names = used.get(join(dirname(file), path!))!;
    const code = text.replace(/^import .*$/gm, '');
    for (const [, name] of code.matchAll(new RegExp(`\\b${variable}\\.(\\w+)`, 'g'))) names.add(name!);
    if (code.includes(`${variable}[`)) names.add('*');
  }
}

/** The compiler does not know the classes of a stylesheet: a misspelt one would be undefined. */
describe('the stylesheets beside the components', () => {
  it.each(modules)('%s has every class that is used of it, and no other', (module) => {
    const names = used.get(module)!;
    const classes = classesOf(module);
    expect([...names].filter((name) => name !== '*' && !classes.has(name))).toEqual([]);
    if (!names.has('*')) expect([...classes].filter((name) => !names.has(name))).toEqual([]);
  });
});
