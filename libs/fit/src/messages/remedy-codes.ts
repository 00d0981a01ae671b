import type { MessageOf, NoParams } from '#measure';
import type { OpeningPlace } from '../design/design.ts';

type By = { readonly byMm: number };

/** A change of the design that would make a check hold. */
export interface RemedyCodes {
  readonly 'deeper-front-neck': By;
  readonly 'wider-neck': By;
  readonly 'narrower-neck': By;
  readonly 'shallower-v': By;
  readonly 'shallower-bands': By;
  readonly 'shallower-rib': By;
  readonly 'wider-cuff': By;
  readonly 'closer-cuff': By;
  readonly 'longer-body': By;
  readonly 'more-ease': By;
  /** Than it has now, where its ease is that of the garment that fits. */
  readonly 'wider-round': By;
  readonly 'straight-hem': NoParams;
  /** `beside`: what lies beside the neck, whose seam may open. */
  readonly 'open-neck': { readonly at: Exclude<OpeningPlace, 'none'>; readonly beside: 'armhole' | 'raglan' };
}

export type RemedyMessage = MessageOf<RemedyCodes>;
