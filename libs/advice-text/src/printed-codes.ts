import type { Fabric } from '#fabric';
import type { Basis, EaseCategory, LengthChoice, Neckline, PieceName, Silhouette } from '#fit';
import type { Construction } from '#garment';
import type { NoParams } from '#measure';
import type { Tape } from './tape.ts';

/** The words of a printed or drawn sheet, but for those that the sheet brings along. Lengths come written, with their unit. */
export interface PrintedCodes {
  readonly untitled: NoParams;
  readonly garment: NoParams;
  readonly checks: NoParams;
  readonly collisions: NoParams;
  readonly cautions: NoParams;
  readonly notes: NoParams;
  /** `unwashed` and `seamed`: the columns that there are. */
  readonly legend: { readonly tape: Tape; readonly unwashed: boolean; readonly seamed: boolean };
  readonly 'drawing-legend': { readonly tape: Tape };
  readonly piece: {
    readonly piece: PieceName;
    readonly make: number;
    readonly mirrored: number;
    readonly workedFrom: 'hem' | 'cuff' | 'edge';
  };
  /** The wishes come in words. */
  readonly collision: { readonly wishes: readonly [string, string]; readonly dimension: string };
  readonly origin: { readonly id: string; readonly day: string; readonly rules: string };
  readonly chosen: {
    readonly construction: Construction;
    readonly silhouette: Silhouette;
    readonly length: LengthChoice;
    readonly neckline: Neckline;
    readonly basis: Basis;
  };
  readonly ease: {
    readonly ofGarment: boolean;
    readonly ease: string;
    readonly category: EaseCategory | null;
    readonly place: number | null;
  };
  /** `lies`: in words. */
  readonly 'wears-like': { readonly ease: string; readonly lies: string | null };
  readonly 'room-left': { readonly room: string };
  readonly 'smaller-inside': { readonly by: string };
  readonly 'chance-of-band': { readonly chance: number };
  readonly fabric: { readonly thicknessMm: number; readonly uMm: number; readonly from: Fabric['from'] };
  readonly 'does-not-apply': NoParams;
  readonly 'at-most': { readonly difference: string; readonly most: string };
  readonly 'chance-of-failing': { readonly chance: number };
}
