/** "A", "A or B", "A, B or C". */
export function oneOf(choices: readonly string[]): string {
  const last = choices[choices.length - 1]!;
  return choices.length === 1 ? last : `${choices.slice(0, -1).join(', ')} or ${last}`;
}
