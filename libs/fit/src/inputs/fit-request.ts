import type { BodyProfile } from '#body';
import type { Fabric } from '#fabric';
import type { MadePiece } from '../messages/advice.ts';
import type { WornGarment } from '../evidence/worn-garment.ts';
import type { Design } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';

/** Everything the advice is made of; lengths in mm. */
export interface FitRequest {
  readonly body: BodyProfile | null;
  /** The garment that fits which the design may be based on. */
  readonly garment: WornGarment | null;
  readonly fabric: Fabric;
  readonly design: Design;
  readonly made: readonly MadePiece[];
  readonly rules: Rules;
}
