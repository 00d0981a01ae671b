/** The same function, which remembers what it answered last: for each change the page asks for everything, and of most nothing has changed. */
export function memoizeLast<A extends readonly unknown[], R>(answer: (...asked: A) => R): (...asked: A) => R {
  let last: { readonly asked: A; readonly answer: R } | null = null;
  return (...asked) => {
    const before = last?.asked;
    if (last === null || asked.some((one, at) => one !== before?.[at])) last = { asked, answer: answer(...asked) };
    return last.answer;
  };
}

/** The object it was given last, where the new one says the same: what is drawn from it is then not drawn anew. */
export function steady<T>(): (next: T) => T {
  const told = memoizeLast((text: string) => JSON.parse(text) as T);
  return (next) => told(JSON.stringify(next));
}
