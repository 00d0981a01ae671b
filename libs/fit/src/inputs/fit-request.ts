import type { BodyProfile } from '#body';
import type { Fabric } from '#fabric';
import type { GarmentProfile } from '#garment';
import type { MadePiece } from '../messages/advice.ts';
import type { Design } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';

/** Everything the advice is made of; lengths in mm. */
export interface FitRequest {
  readonly body: BodyProfile | null;
  readonly garment: GarmentProfile | null;
  readonly fabric: Fabric;
  readonly design: Design;
  readonly made: readonly MadePiece[];
  readonly rules: Rules;
}
