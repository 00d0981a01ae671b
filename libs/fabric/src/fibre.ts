export const FIBRES = ['wool', 'cotton', 'acrylic', 'polyester', 'nylon', 'linen'] as const;
export type Fibre = (typeof FIBRES)[number];
