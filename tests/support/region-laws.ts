import type { Piece } from '#target-sheet';

const near = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-6;

const BEGINS = { hem: /^hem-width$/, cuff: /^cuff-width$/, edge: /-edge$/ };

/** Regions follow each other from the edge where work begins to the end, each beginning as wide as the one below it says. */
export function regionLaws({ outline, regions, dimensions, workedFrom }: Piece): string[] {
  if (!outline) return regions.length > 0 ? ['has no outline, and regions'] : [];
  const height = Math.max(...outline.map(([, y]) => y));
  const [first, last] = [regions[0], regions.at(-1)];
  if (!first || !last) return ['has an outline, and no regions'];
  const begins = dimensions.find(({ name }) => BEGINS[workedFrom].test(name))?.value;
  return [
    ...(first.from === 0 && near(last.to, height) ? [] : [`its regions go from ${first.from} to ${last.to}`]),
    ...(begins === undefined || begins === null || near(first.width, begins)
      ? []
      : [`it begins ${first.width} wide, and its edge is ${begins}`]),
    ...regions.flatMap(({ region, from, to, startsAt }, index) => {
      const above = regions[index + 1];
      return [
        ...(from < to ? [] : [`its ${region} goes from ${from} to ${to}`]),
        ...(above?.from === (above && to) && above?.width === startsAt
          ? []
          : [`what lies above its ${region} begins elsewhere`]),
      ];
    }),
  ];
}
