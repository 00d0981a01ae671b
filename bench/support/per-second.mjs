/** How many times a second a piece of work is done, over `count` of it. */
export function perSecond(work, count) {
  const start = process.hrtime.bigint();
  for (let i = 0; i < count; i++) work(i);
  return count / (Number(process.hrtime.bigint() - start) / 1e9);
}
