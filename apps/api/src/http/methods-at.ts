import type { Application } from 'express';

/** A layer of express's router, as far as its own types leave it out. */
interface Matching {
  match(path: string): unknown;
}

/** The methods that an address takes, as `Allow` lists them: with HEAD beside GET, and OPTIONS. None where nothing is at it. */
export function methodsAt(app: Application, path: string): string[] {
  const named = namedPaths(app).get(path);
  if (named !== undefined) return named;
  const methods = new Set<string>();
  for (const layer of app.router.stack) {
    if (layer.route === undefined || !(layer as unknown as Matching).match(path)) continue;
    for (const { method } of layer.route.stack) methods.add(method.toUpperCase());
  }
  return methods.size === 0 ? [] : withImplied(methods);
}

/** Whether an address that a route names in full, without parameters, takes this method; true of every other address. */
export function takesMethod(app: Application, path: string, method: string): boolean {
  return namedPaths(app).get(path)?.includes(method) ?? true;
}

const known = new WeakMap<Application, ReadonlyMap<string, string[]>>();

/** The methods of every path that has no parameter. Such a path is never taken for the id in another. */
function namedPaths(app: Application): ReadonlyMap<string, string[]> {
  const before = known.get(app);
  if (before !== undefined) return before;
  const methods = new Map<string, Set<string>>();
  for (const { route } of app.router.stack) {
    if (typeof route?.path !== 'string' || /[:*{]/.test(route.path)) continue;
    const taken = methods.get(route.path) ?? new Set();
    for (const { method } of route.stack) taken.add(method.toUpperCase());
    methods.set(route.path, taken);
  }
  const named = new Map([...methods].map(([path, taken]) => [path, withImplied(taken)]));
  known.set(app, named);
  return named;
}

function withImplied(methods: ReadonlySet<string>): string[] {
  return [...methods, ...(methods.has('GET') ? ['HEAD'] : []), 'OPTIONS'].sort();
}
