import type { BodySourceCodes } from '#body';
import type { FabricSourceCodes } from '#fabric';
import type { MessageOf, NoParams } from '#measure';
import type { RuleName } from '../design/rules.ts';

/** Where a number is from. `share` and `ordinaryShare`: how often the fabric's thickness and an ordinary one's enter. */
export interface SourceCodes extends BodySourceCodes, FabricSourceCodes {
  readonly chosen: NoParams;
  readonly given: NoParams;
  readonly model: NoParams;
  readonly solved: NoParams;
  readonly 'made-piece': NoParams;
  readonly 'common-practice': NoParams;
  readonly 'practice-and-law-for-children': NoParams;
  readonly rule: { readonly rule: RuleName };
  readonly 'fabric-beside-ordinary': {
    readonly share: number;
    readonly ordinaryShare: number;
    readonly fabric: Source;
  };
}

export type Source = MessageOf<SourceCodes>;
