/** The area that a closed outline encloses, its points counter-clockwise; less than 0 where they are clockwise. */
export function polygonArea(outline: readonly (readonly [number, number])[]): number {
  const doubled = outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return doubled / 2;
}
