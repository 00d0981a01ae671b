import { plus } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import { always, type CheckRule, never } from './check.ts';
import { armholeOf, hasArmholeToSpare, those } from './cures.ts';

export const bodyBelowUnderarm: CheckRule = {
  check: 'body-below-underarm',
  dimension: 'body-to-underarm',
  wishes: ['body-below-underarm', 'short-length'],
  kind: 'length',
  comfort: never,
  stretches: never,
  applies: always,
  limits: ({ body }) => ({ need: plus(body.rib, INPUTS.bodyBelow), have: body.pieceToUnderarm }),
  saysMargin: true,
  cures: (at) => {
    if (bodyIsMade(at.choices)) return ['longer-body-again'];
    return those(
      'longer-body',
      at.offered('ribMm') && 'shallower-rib-of-body',
      hasArmholeToSpare(at) && `shallower-${armholeOf(at.choices)}-of-body`,
    );
  },
  remedies: (search) => {
    const { choices, garment } = search;
    if (bodyIsMade(choices)) return [];
    const longer = { step: 10, most: 600 };
    return [
      ...search.more(garment.body.length, 'customLengthMm', longer, 'longer-body', { length: 'custom' }),
      ...search.less(garment.body.rib, 'ribMm', 'shallower-rib'),
    ];
  },
};
