import type { CheckName } from '../messages/advice.ts';
import { alongTheTop } from './along-the-top.ts';
import { armhole } from './armhole.ts';
import { bodyBelowUnderarm } from './body-below-underarm.ts';
import type { CheckRule } from './check.ts';
import { cuffStays } from './cuff-stays.ts';
import { frontAndBack } from './front-and-back.ts';
import { handThroughCuff } from './hand-through-cuff.ts';
import { headThroughNeck } from './head-through-neck.ts';
import { hip } from './hip.ts';
import { napeToCuff } from './nape-to-cuff.ts';
import { neckDepth } from './neck-depth.ts';
import { neckOnShoulders } from './neck-on-shoulders.ts';
import { negativeEase } from './negative-ease.ts';
import { overTheShoulders } from './over-the-shoulders.ts';
import { raglanSlope } from './raglan-slope.ts';
import { seam } from './seam.ts';
import { sleeveBelowUnderarm } from './sleeve-below-underarm.ts';
import { sleeveTaper } from './sleeve-taper.ts';
import { underTheArm } from './under-the-arm.ts';
import { upperArm } from './upper-arm.ts';

/** Every check, in the order in which a garment is put on and worn. */
const BY_NAME: Readonly<Record<CheckName, CheckRule>> = {
  'head-through-neck': headThroughNeck,
  'hand-through-cuff': handThroughCuff,
  'cuff-stays': cuffStays,
  'upper-arm': upperArm,
  armhole,
  'over-the-shoulders': overTheShoulders,
  hip,
  'negative-ease': negativeEase,
  'neck-on-shoulders': neckOnShoulders,
  'body-below-underarm': bodyBelowUnderarm,
  'sleeve-below-underarm': sleeveBelowUnderarm,
  'under-the-arm': underTheArm,
  'neck-depth': neckDepth,
  'sleeve-taper': sleeveTaper,
  'front-and-back': frontAndBack,
  seam,
  'nape-to-cuff': napeToCuff,
  'along-the-top': alongTheTop,
  'raglan-slope': raglanSlope,
};

export const CHECK_RULES: readonly CheckRule[] = Object.values(BY_NAME);
