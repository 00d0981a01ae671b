const LONGEST = 12;

/** A text cut to what fits on the line beneath its field. */
export const truncated = (text: string): string => {
  const tidy = text.trim();
  return tidy.length > LONGEST ? `${tidy.slice(0, LONGEST)}…` : tidy;
};
