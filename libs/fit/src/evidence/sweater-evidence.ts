import type { BentTerm, BodyDimension, HiddenNumber, Observation } from '#body';
import type { GarmentDimension, GarmentValue } from '#garment';
import { easePrior } from './ease-prior.ts';
import { SWEATER_NUMBERS, type SweaterNumbers } from './numbers.ts';
import { OF_CONSTRUCTION } from './of-construction.ts';
import { regionEase } from './region.ts';
import { sleeveObservation } from './sleeve.ts';
import type { Sweater, SweaterRegion, WearerSoFar } from './sweater.ts';

/** A sweater's ease, of which only a prior is known, and what its measures say of the body and that ease. */
export interface SweaterEvidence {
  readonly ease: HiddenNumber;
  readonly observations: readonly Observation[];
}

/** What a measure of the sweater is in terms of the body. `tau` is its own spread (assumed); of the chest there is none but the ease's. mm */
interface Reading {
  readonly id: GarmentDimension;
  readonly region: SweaterRegion;
  readonly read: GarmentValue;
  /** 2 where a width stands for a girth. */
  readonly times: 1 | 2;
  readonly of: BodyDimension;
  /** So many of the dimension; 1 where it is not said. */
  readonly share?: number;
  readonly ease: number | BentTerm;
  readonly constant: number;
  readonly tau: number;
}

/**
 * What a sweater that fits tells of its wearer, measure by measure: each is the body's, the ease of its region, and what fabric, layer and construction add. A
 * raglan's armhole depth tells nothing, since it runs from the neck.
 */
export function sweaterEvidence(
  sweater: Sweater,
  wearer: WearerSoFar,
  numbers: SweaterNumbers = SWEATER_NUMBERS,
): SweaterEvidence {
  const half = (1 + wearer.scale) / 2;
  const ease = easePrior(sweater, numbers, half);
  const observations = readings(sweater, wearer, numbers, half).map((one): Observation => {
    const { term, added, spread } = regionEase(sweater, one.region, one.ease, half);
    return {
      id: one.id,
      source: sweater.name,
      dimensions: { [one.of]: one.share ?? 1 },
      hidden: { [ease.name]: term },
      constant: one.constant + added,
      observed: one.times * one.read.value,
      tau: spread * one.tau,
      u: one.times * one.read.u,
      ...(one.id === 'chest-width' && { anchors: ease.name }),
    };
  });
  const sleeve = sleeveObservation(sweater);
  return { ease, observations: sleeve === null ? observations : [...observations, sleeve(ease.name)] };
}

function readings(sweater: Sweater, wearer: WearerSoFar, numbers: SweaterNumbers, half: number): readonly Reading[] {
  const { values, thicknessMm, layer, crew } = sweater;
  const { crossBack, armhole, upperArm } = OF_CONSTRUCTION[sweater.construction];
  const { scale } = wearer;
  const thicker = thicknessMm - numbers.ordinaryThickness;
  const s = layer?.thicknessMm ?? 0;
  const [sArm, sWrist] = [layer?.sleeves === 'none' ? 0 : s, layer?.sleeves === 'long' ? s : 0];
  /** What a girth of the fabric takes, and a layer beneath of thickness s. */
  const girth = (layerMm: number) => 2 * Math.PI * layerMm + 4 * thicker;
  const found: Reading[] = [];
  const add = (id: GarmentDimension, rest: Omit<Reading, 'id' | 'read'>) => {
    const read = values[id];
    if (read !== undefined) found.push({ id, read, ...rest });
  };

  add('chest-width', { region: 'chest', times: 2, of: 'chest-girth', ease: 1, constant: girth(s), tau: 0 });
  if (reachesHip(sweater, wearer)) {
    const hipEase = { at: numbers.hipEaseMost * half, below: 1, above: 0 };
    add('hem-width', { region: 'hip', times: 2, of: 'hip-girth', ease: hipEase, constant: girth(s), tau: 40 });
  }
  if (crossBack)
    add('cross-back-width', { region: 'across-back', times: 1, of: 'across-back', ease: 0.12, constant: 0, tau: 15 });
  if (armhole !== null) {
    const room = (numbers.armholeRoom + armhole.deeper(numbers)) * scale;
    const constant = room + (Math.PI / 2) * thicker + Math.PI * sArm;
    const measured = armhole.from.find((id) => values[id] !== undefined);
    if (measured) add(measured, { region: 'armhole', times: 1, of: 'scye-depth', ease: 0.1, constant, tau: 20 });
  }
  if (upperArm) {
    const ease = { at: 0, below: 0.2, above: 0.5 };
    const constant = girth(sArm);
    add('sleeve-top-width', { region: 'upper-arm', times: 2, of: 'upper-arm-girth', ease, constant, tau: 30 });
  }
  const wristRoom = numbers.wristRoom * scale + girth(sWrist);
  add('cuff-width', { region: 'cuff', times: 2, of: 'wrist-girth', ease: 0.15, constant: wristRoom, tau: 20 });
  if (crew) {
    const [share, constant] = [1 / Math.PI, numbers.crewRoom * scale];
    add('neck-width', { region: 'neck', times: 1, of: 'neck-base-girth', share, ease: 0, constant, tau: 20 });
  }
  return found;
}

/** A hem tells of the hip where it is an adult's 100 below the back waist at least; where that is not known, it does. */
function reachesHip({ values }: Sweater, { scale, backWaist, neckBase }: WearerSoFar): boolean {
  const shoulderToHem = values['shoulder-to-hem']?.value;
  const backNeck = values['back-neck-depth']?.value ?? (neckBase === null ? undefined : neckBase / 18);
  if (shoulderToHem === undefined || backNeck === undefined || backWaist === null) return true;
  return shoulderToHem - backNeck >= backWaist + 100 * scale;
}
