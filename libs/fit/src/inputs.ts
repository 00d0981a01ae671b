import { dimensionText, type BodyDimension, type BodyProfile } from '#body';
import type { GarmentDimension, GarmentProfile } from '#garment';
import { easeBands, chosenEase, easeWords } from './ease.ts';
import type { FitRequest } from './fit-request.ts';
import { inWords } from './in-words.ts';
import { ruleSource, type RuleName, type Rules } from './rules.ts';
import { type InputName, type Row, S, unknownRow } from './slots.ts';

/** One input of the model as a sheet tells of it: its place in the row, and the body dimension it is. */
export interface Input {
  readonly slot: number;
  readonly label: string;
  readonly from: string;
  readonly value: number;
  readonly u: number;
  readonly body: BodyDimension | null;
}

/** All that goes into the model: the numbers in their places of a row (NaN where not known), and what is known of each. */
export interface Inputs {
  readonly values: Row;
  readonly told: readonly Input[];
}

/** Body dimensions that enter the model, by their place. */
export const BODY_INPUTS: readonly (readonly [InputName, BodyDimension])[] = [
  ['chest', 'chest-girth'],
  ['hip', 'hip-girth'],
  ['upperArm', 'upper-arm-girth'],
  ['wrist', 'wrist-girth'],
  ['acrossBack', 'across-back'],
  ['nape', 'nape-to-cuff'],
  ['scye', 'scye-depth'],
  ['neckBase', 'neck-base-girth'],
  ['head', 'head-girth'],
  ['hand', 'hand-girth'],
  ['shoulderGirth', 'shoulder-girth'],
  ['scyeGirth', 'scye-girth'],
  ['underarm', 'underarm-length'],
  ['backWaist', 'back-waist-length'],
  ['backHip', 'back-hip-length'],
  ['frontWaist', 'front-waist-length'],
];

/** Measures of the body that the advice rests on. */
export const BODY_MEASURES: readonly BodyDimension[] = BODY_INPUTS.map(([, dimension]) => dimension);

const GARMENT_INPUTS: readonly (readonly [InputName, GarmentDimension])[] = [
  ['refChest', 'chest-width'],
  ['refHem', 'hem-width'],
  ['refShoulderToHem', 'shoulder-to-hem'],
  ['refBackNeck', 'back-neck-depth'],
  ['refFrontNeck', 'front-neck-depth'],
  ['refNeckWidth', 'neck-width'],
  ['refCrossBack', 'cross-back-width'],
  ['refArmhole', 'armhole-depth'],
  ['refSleeveTop', 'sleeve-top-width'],
  ['refSleeve', 'sleeve-length'],
  ['refCuff', 'cuff-width'],
];

/** A table of inputs being filled. */
class Filling {
  readonly values = unknownRow();
  readonly told: Input[] = [];

  set(name: InputName, value: number): void {
    this.values[S[name]] = value;
  }

  add(name: InputName, value: number, label: string, from: string, u = 0, body: BodyDimension | null = null): void {
    const slot = S[name];
    this.set(name, value);
    this.told.push({ slot, label, from, value, u, body });
  }
}

const OF_GARMENT = Object.fromEntries(
  GARMENT_INPUTS.map(([, name]) => [name, `the garment's ${inWords(name)}`]),
) as Record<GarmentDimension, string>;

function addBody(filling: Filling, body: BodyProfile): void {
  for (const [name, dimension] of BODY_INPUTS) {
    const known = body.values[dimension];
    if (known) filling.add(name, known.value, dimensionText(dimension), known.from, known.u, dimension);
  }
}

function addGarment(filling: Filling, garment: GarmentProfile): void {
  for (const [name, dimension] of GARMENT_INPUTS) {
    const known = garment.values[dimension];
    if (known) filling.add(name, known.value, OF_GARMENT[dimension], known.from, known.u);
  }
  filling.add('refThickness', garment.thicknessMm, "the garment's own fabric", 'given', garment.thicknessU);
  const layer = garment.layer;
  filling.add('refLayer', layer?.thicknessMm ?? 0, 'what is worn beneath the garment', 'given', layer?.u ?? 0);
}

/** Numbers the rules give at this size, with what each does on a sheet. */
function addRuled(filling: Filling, request: FitRequest, sized: Rules): void {
  const { design, garment } = request;
  const add = (input: InputName, rule: RuleName, label: string): void =>
    filling.add(input, sized[rule], label, ruleSource(rule));
  add('ordinaryThickness', 'ordinary-thickness', 'ordinary fabric');
  add('hipEaseMost', 'hip-ease-most', 'ease at the hip');
  add('wristRoom', 'wrist-room', 'room at the wrist');
  add('armholeRoom', 'armhole-room', 'room below the scye');
  if (request.body?.figure === 'man') add('hipBelowWaist', 'hip-below-waist-man', 'hip below the waist');
  add('neckFromShoulders', 'neck-from-shoulders', 'what the shoulders keep');
  if (design.neckline === 'boat') {
    add('boatShoulders', 'boat-shoulders', 'what the shoulders keep');
    add('boatDepth', 'boat-depth', 'depth of a boat neck');
  }
  if (design.construction === 'squared-drop') add('squaredInsetMost', 'squared-inset-most', 'the most it goes in');
  if (design.construction === 'set-in') add('setInInsetLeast', 'set-in-inset-least', 'the least it goes in');
  // These enter checks alone, and no dimension's reasons.
  filling.set('shoulderLeast', sized['shoulder-least']);
  filling.set('bodyBelow', sized['body-below-underarm']);
  filling.set('sleeveBelow', sized['sleeve-below-underarm']);
  filling.set('bustLine', sized['bust-line-below-scye']);
  if (design.length !== 'custom') {
    const whose = request.body?.figure === 'man' ? 'man' : kappaFigure(request.body) ? 'child' : 'woman';
    add('lengthOffset', `length-${whose}-${design.length}`, `${design.length} length`);
  }
  const scoop = design.neckline === 'scoop';
  const room = sized['crew-neck-room'] + (scoop ? sized['scoop-wider'] : 0);
  filling.add(
    'neckRoom',
    room,
    scoop ? 'room at the neck, and wider for a scoop' : 'room at the neck',
    ruleSource('crew-neck-room'),
  );
  const deeper = scoop ? sized['scoop-deeper'] : 0;
  filling.add('neckDeeper', deeper, 'extra depth of a scoop', ruleSource('scoop-deeper'));
  addDeeper(filling, 'armholeDeeper', design.construction, sized);
  if (garment) addDeeper(filling, 'refDeeper', garment.construction, sized);
}

const kappaFigure = (body: BodyProfile | null): boolean => body?.figure === 'child' || body?.figure === 'baby';

/** How much deeper than a set-in armhole a construction's is. */
function addDeeper(
  filling: Filling,
  input: 'armholeDeeper' | 'refDeeper',
  construction: FitRequest['design']['construction'],
  sized: Rules,
): void {
  if (construction === 'set-in') filling.add(input, 0, 'set-in armhole', 'chosen');
  else {
    const rule = `${construction}-deeper` as const;
    const own = inWords(construction);
    const label = input === 'armholeDeeper' ? `extra depth of a ${own}` : `the garment's extra depth as a ${own}`;
    filling.add(input, sized[rule], label, ruleSource(rule));
  }
}

function addChosen(filling: Filling, request: FitRequest, sized: Rules): void {
  const { design, fabric } = request;
  const layer = design.layer;
  filling.add('thickness', fabric.thicknessMm, 'fabric', fabric.fromText, fabric.thicknessU);
  filling.add('layer', layer?.thicknessMm ?? 0, 'what is worn beneath', 'given', layer?.u ?? 0);

  const ease = easeWords(design.ease);
  filling.add('chosenEase', chosenEase(design.ease, easeBands(sized)), ease.label, ease.from);
  filling.add('easeChange', design.easeChangeMm, 'wished change of ease', 'chosen');
  const orRule = (input: InputName, own: number | null, rule: RuleName, label: string): void =>
    filling.add(input, own ?? sized[rule], label, own === null ? ruleSource(rule) : 'chosen');
  orRule('band', design.bandMm, 'band-depth', 'band depth');
  orRule('frontBand', design.frontBandMm, 'front-band-width', 'front band');
  const overlap = design.overlapMm ?? design.frontBandMm;
  orRule('overlap', overlap, 'front-band-width', 'overlap of the bands');
  orRule('rib', design.ribMm, 'rib-depth', 'rib depth');
  const own = (input: InputName, value: number | null, label: string): void => {
    if (value !== null) filling.add(input, value, label, 'chosen');
  };
  own('customLength', design.customLengthMm, 'chosen length');
  own('ownNeckWidth', design.neckWidthMm, 'chosen neck width');
  own('ownFrontNeck', design.frontNeckDepthMm, 'chosen front neck depth');
  own('ownBackNeck', design.backNeckDepthMm, 'chosen back neck depth');
}

/** Fills every input's place from what the maker gave and the rules at her size. `madeInputs` come from pieces already made. */
export function inputsOf(
  request: FitRequest,
  sized: Rules,
  madeInputs: ReadonlyMap<InputName, { readonly value: number; readonly label: string }>,
): Inputs {
  const filling = new Filling();
  if (request.body) addBody(filling, request.body);
  if (request.garment && request.design.basis !== 'body') addGarment(filling, request.garment);
  addRuled(filling, request, sized);
  addChosen(filling, request, sized);
  for (const [name, made] of madeInputs) filling.add(name, made.value, made.label, 'a piece already made');
  return filling;
}
