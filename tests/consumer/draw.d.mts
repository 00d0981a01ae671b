export interface Understood {
  readonly title: string;
  readonly pieces: readonly {
    readonly name: string;
    readonly make: number;
    readonly mirrored: number;
    readonly outline: readonly (readonly [number, number])[];
    readonly sizes: readonly {
      readonly name: string;
      readonly madeBy: 'stitches' | 'rows';
      readonly gauge: string;
      readonly length: number;
      readonly least: number;
      readonly most: number;
    }[];
  }[];
  readonly unsaid: readonly { readonly name: string; readonly measure: readonly string[]; readonly why: string }[];
  readonly troubles: readonly string[];
  readonly cautions: readonly string[];
}
export function understand(text: string): Understood;
export function draw(understood: Understood): string;
