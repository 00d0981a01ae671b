import type { Application } from 'express';

/** The methods that some address takes, each once; none where nothing is at it. Parameters match any one part of a path. */
export function methodsAt(app: Application, path: string): string[] {
  const parts = path.split('/');
  const matches = (pattern: string): boolean => {
    const wanted = pattern.split('/');
    return (
      wanted.length === parts.length && wanted.every((part, at) => part === parts[at] || (part[0] === ':' && parts[at]))
    );
  };
  const routes = app.router.stack.flatMap(({ route }) => (route && matches(route.path) ? route.stack : []));
  return [...new Set(routes.map(({ method }) => method.toUpperCase()))].sort();
}
