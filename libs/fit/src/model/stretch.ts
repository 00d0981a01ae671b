import type { Choices } from '../design/choices.ts';

/** How many times its length the main fabric reaches when it is pulled. */
export const mainStretch = ({ usable }: Choices): number => 1 + usable.main;

/** The same at arm and armhole, where only a close-fitting garment stretches. */
export const closeStretch = (choices: Choices): number => (choices.closeFitting ? mainStretch(choices) : 1);

/** How many times its length a neck's edge reaches: its band, or the main fabric where it has none. */
export const neckStretch = ({ usable, bandless }: Choices): number => 1 + (bandless ? usable.main : usable.rib);
