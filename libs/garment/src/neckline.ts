export const NECKLINES = ['crew', 'v', 'boat', 'scoop'] as const;
export type Neckline = (typeof NECKLINES)[number];
