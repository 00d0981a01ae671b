/** "A", "A and B", "A, B and C". */
export function allOf(names: readonly string[]): string {
  const last = names[names.length - 1]!;
  return names.length === 1 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
