/** The same function with its result cached for each argument, as long as that lives: what is unchanged keeps its identity. */
export function memoizeEach<A extends object, R>(compute: (argument: A) => R): (argument: A) => R {
  const known = new WeakMap<A, { readonly result: R }>();
  return (argument) => {
    const found = known.get(argument) ?? { result: compute(argument) };
    known.set(argument, found);
    return found.result;
  };
}
