/** The end of a switch over a closed union: a member that it does not name does not compile. */
export function assertNever(never: never): never {
  throw new Error(`Not one of the known: ${JSON.stringify(never)}`);
}
