/** A random key. `crypto.randomUUID` exists only on https and on localhost; a phone may load the page by plain http. */
export function newKey(): string {
  return [...crypto.getRandomValues(new Uint32Array(4))].map((part) => part.toString(36)).join('');
}
