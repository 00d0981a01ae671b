/** A name in words: "very-close" is "very close". */
export const inWords = (name: string): string => name.replaceAll('-', ' ');
