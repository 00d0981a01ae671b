/** A name for something new in the notebook. `randomUUID` is only there for pages from https or this machine; a phone may come by plain http. */
export function newKey(): string {
  return [...crypto.getRandomValues(new Uint32Array(4))].map((part) => part.toString(36)).join('');
}
