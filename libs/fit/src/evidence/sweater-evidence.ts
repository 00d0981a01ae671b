import type { BentTerm, BodyDimension, HiddenNumber, Observation } from '#body';
import type { GarmentDimension, GarmentValue, Region } from '#garment';
import { easePrior } from './ease-prior.ts';
import { OF_CONSTRUCTION } from './of-construction.ts';
import { regionEase } from './region.ts';
import { sleeveObservation } from './sleeve.ts';
import type { Sweater, WearerSoFar } from './sweater.ts';

/** A sweater's ease, of which only a prior is known, and what its measures say of the body and that ease. */
export interface SweaterEvidence {
  readonly ease: HiddenNumber;
  readonly observations: readonly Observation[];
}

/** What a measure of the sweater is in terms of the body. `tau` is its own spread (assumed); of the chest there is none but the ease's. mm */
interface Reading {
  readonly id: GarmentDimension;
  readonly region: Region;
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
export function sweaterEvidence(sweater: Sweater, wearer: WearerSoFar): SweaterEvidence {
  const { sized } = wearer;
  const ease = easePrior(sweater, sized);
  const observations = readings(sweater, wearer).map((one): Observation => {
    const { term, added, spread } = regionEase(sweater, one.region, one.ease, sized);
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
      ...(one.read.confirmed && { confirmed: true }),
    };
  });
  const sleeve = sleeveObservation(sweater, sized);
  return { ease, observations: sleeve === null ? observations : [...observations, sleeve(ease.name)] };
}

function readings(sweater: Sweater, wearer: WearerSoFar): readonly Reading[] {
  const { values, thicknessMm, layer } = sweater;
  const { crossBack, armhole, upperArm } = OF_CONSTRUCTION[sweater.construction];
  const { sized } = wearer;
  const thicker = thicknessMm - sized['ordinary-thickness'];
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
    const hipEase = { at: sized['hip-ease-most'], below: 1, above: 0 };
    add('hem-width', { region: 'hip', times: 2, of: 'hip-girth', ease: hipEase, constant: girth(s), tau: 40 });
  }
  if (crossBack) {
    const ease = sized['across-back-ease'];
    add('cross-back-width', { region: 'across-back', times: 1, of: 'across-back', ease, constant: 0, tau: 15 });
  }
  if (armhole !== null) {
    const room = sized['armhole-room'] + armhole.deeper(sized);
    const constant = room + (Math.PI / 2) * thicker + Math.PI * sArm;
    const measured = armhole.from.find((id) => values[id] !== undefined);
    const ease = sized['armhole-ease'];
    if (measured) add(measured, { region: 'armhole', times: 1, of: 'scye-depth', ease, constant, tau: 20 });
  }
  if (upperArm) {
    const ease = { at: 0, below: sized['upper-arm-negative-ease'], above: sized['upper-arm-ease'] };
    const constant = girth(sArm);
    add('sleeve-top-width', { region: 'upper-arm', times: 2, of: 'upper-arm-girth', ease, constant, tau: 30 });
  }
  if (sweater.sleeve === 'long') {
    const [ease, constant] = [sized['wrist-ease'], sized['wrist-room'] + girth(sWrist)];
    add('cuff-width', { region: 'cuff', times: 2, of: 'wrist-girth', ease, constant, tau: 20 });
  }
  if (sweater.neckline === 'crew') {
    const [share, constant] = [1 / Math.PI, sized['crew-neck-room']];
    add('neck-width', { region: 'neck', times: 1, of: 'neck-base-girth', share, ease: 0, constant, tau: 20 });
  }
  return found;
}

/** A hem tells of the hip where it is an adult's 100 below the back waist at least; where that is not known, it does. */
function reachesHip({ values }: Sweater, { sized, backWaist, neckBase }: WearerSoFar): boolean {
  const shoulderToHem = values['shoulder-to-hem']?.value;
  const backNeck =
    values['back-neck-depth']?.value ?? (neckBase === null ? undefined : sized['crew-back-share'] * neckBase);
  if (shoulderToHem === undefined || backNeck === undefined || backWaist === null) return true;
  return shoulderToHem - backNeck >= backWaist + sized['hip-reached'];
}
