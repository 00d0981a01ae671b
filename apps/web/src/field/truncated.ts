const LONGEST = 12;

/** So much of a text as has room in a line beneath its field. */
export const truncated = (text: string): string => {
  const tidy = text.trim();
  return tidy.length > LONGEST ? `${tidy.slice(0, LONGEST)}…` : tidy;
};
