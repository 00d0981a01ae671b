/** An age for people: in months under two years, else in years. `0.25` → "3 months", `6` → "6 years", `1/12` → "1 month". */
export function ageText(years: number): string {
  const [count, unit] = years < 2 ? [Math.round(years * 12), 'month'] : [Math.round(years * 10) / 10, 'year'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
