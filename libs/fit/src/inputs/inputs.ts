import type { BodyDimension, BodyProfile } from '#body';
import type { GarmentDimension } from '#garment';

import { chosenEase, easeBands, easeSource } from './ease.ts';
import type { WornGarment } from '../evidence/worn-garment.ts';
import type { FitRequest } from './fit-request.ts';
import { armholeFrom } from './kept-from-garment.ts';
import { NONE } from '../messages/none.ts';
import type { Source } from '../messages/source-codes.ts';
import type { InputCodes, InputTerm } from '../messages/term-codes.ts';
import type { RuleName, Rules } from '../design/rules.ts';
import { AT, INPUT_NAMES, type InputName, type InputValues } from '../model/inputs.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';

/** One input of the model: what it is, where it is from, and the body dimension that it is, if it is one. */
export interface KnownInput {
  readonly name: InputName;
  readonly term: InputTerm;
  readonly from: Source;
  readonly value: number;
  readonly u: number;
  readonly body: BodyDimension | null;
}

/** All that goes into the model: the values (NaN where not known), and by their places what is known of each. */
export interface Inputs {
  readonly values: InputValues;
  readonly known: readonly (KnownInput | undefined)[];
}

/** Body dimensions that enter the model, by the inputs they are. */
export const BODY_INPUTS: readonly (readonly [InputName, BodyDimension])[] = [
  ['chest', 'chest-girth'],
  ['hip', 'hip-girth'],
  ['upperArm', 'upper-arm-girth'],
  ['wrist', 'wrist-girth'],
  ['acrossBack', 'across-back'],
  ['napeToCuff', 'nape-to-cuff'],
  ['scyeDepth', 'scye-depth'],
  ['neckBase', 'neck-base-girth'],
  ['head', 'head-girth'],
  ['hand', 'hand-girth'],
  ['shoulderGirth', 'shoulder-girth'],
  ['scyeGirth', 'scye-girth'],
  ['underarmLength', 'underarm-length'],
  ['backWaist', 'back-waist-length'],
  ['backHip', 'back-hip-length'],
  ['frontWaist', 'front-waist-length'],
];

/** Measures of the body that the advice rests on. */
export const BODY_MEASURES: readonly BodyDimension[] = BODY_INPUTS.map(([, dimension]) => dimension);

const GARMENT_INPUTS: readonly (readonly [InputName, GarmentDimension])[] = [
  ['refChestWidth', 'chest-width'],
  ['refHemWidth', 'hem-width'],
  ['refShoulderToHem', 'shoulder-to-hem'],
  ['refBackNeck', 'back-neck-depth'],
  ['refFrontNeck', 'front-neck-depth'],
  ['refNeckWidth', 'neck-width'],
  ['refCrossBack', 'cross-back-width'],
  ['refSleeveTop', 'sleeve-top-width'],
  ['refSleeve', 'sleeve-length'],
  ['refCuff', 'cuff-width'],
];

/** A table of inputs being filled. */
class Filling {
  readonly values = new Array<number>(INPUT_NAMES.length).fill(NaN);
  readonly known = new Array<KnownInput | undefined>(INPUT_NAMES.length).fill(undefined);

  set(name: InputName, value: number): void {
    this.values[AT[name]] = value;
  }

  add(name: InputName, value: number, term: InputTerm, from: Source, u = 0, body: BodyDimension | null = null): void {
    this.set(name, value);
    this.known[AT[name]] = { name, term, from, value, u, body };
  }
}

type PlainCode = {
  [Code in keyof InputCodes]: keyof InputCodes[Code] extends never ? Code : never;
}[keyof InputCodes];

const plain = (code: PlainCode): InputTerm => ({ code, params: NONE }) as InputTerm;
const CHOSEN: Source = { code: 'chosen', params: NONE };
const GIVEN: Source = { code: 'given', params: NONE };
const MADE: Source = { code: 'made-piece', params: NONE };
const ESTIMATED: Source = { code: 'model', params: NONE };
const ASSUMED: Source = { code: 'assumed', params: NONE };

/** Standard uncertainty of a garment's back neck depth that was not measured, mm (assumed). */
const BACK_NECK_U = 8;
const ofRule = (rule: RuleName): Source => ({ code: 'rule', params: { rule } });

function addBody(filling: Filling, body: BodyProfile): void {
  for (const [name, dimension] of BODY_INPUTS) {
    const known = body.values[dimension];
    if (known)
      filling.add(name, known.value, { code: 'body-measure', params: { dimension } }, known.from, known.u, dimension);
  }
}

/** What the safety margins for head and hand are made of. */
function addSafety(filling: Filling, body: BodyProfile): void {
  const add = (name: InputName, dimension: BodyDimension): void => {
    const known = body.values[dimension];
    if (known) filling.add(name, known.u, { code: 'uncertainty-of', params: { dimension } }, known.from);
  };
  add('headUncertainty', 'head-girth');
  add('handUncertainty', 'hand-girth');
}

/** Girths of the body that a stiff fabric wears smaller at. */
const STIFF: readonly (readonly [InputName, BodyDimension])[] = [
  ['stiffChest', 'chest-girth'],
  ['stiffHip', 'hip-girth'],
  ['stiffUpperArm', 'upper-arm-girth'],
];

/** Whether the main fabric was pulled and gives less than an ordinary knit. */
export const isStiff = ({ fabric, rules }: FitRequest): boolean =>
  fabric.stretch !== null && fabric.mainUsable < rules['stiff-below'];

/** `σ(x) = min(20κ, 0.25(0.10 − a)x)`, a the usable stretch; half of it is its uncertainty. */
function addStiff(filling: Filling, request: FitRequest, sized: Rules): void {
  if (!isStiff(request)) return;
  const share = sized['stiff-share'] * (sized['stiff-below'] - request.fabric.mainUsable);
  for (const [name, dimension] of STIFF) {
    const girth = request.body?.values[dimension]?.value ?? 0;
    const sigma = Math.min(sized['stiff-most'], share * girth);
    filling.add(name, sigma, { code: 'stiff-fabric', params: { dimension } }, ofRule('stiff-share'), sigma / 2);
  }
}

function addGarment(filling: Filling, garment: WornGarment): void {
  const add = (name: InputName, dimension: GarmentDimension): void => {
    const known = garment.values[dimension];
    if (!known) return;
    const from: Source = { code: 'measured', params: { how: known.how } };
    filling.add(name, known.value, { code: 'garment-measure', params: { dimension } }, from, known.u);
  };
  for (const [name, dimension] of GARMENT_INPUTS) add(name, dimension);
  const armhole = armholeFrom(garment);
  if (armhole !== null) add('refArmhole', armhole);
  filling.add('refBackNeckOff', 0, plain('garment-back-neck'), ASSUMED, BACK_NECK_U);
  filling.add('refThickness', garment.thicknessMm, plain('garment-fabric'), GIVEN, garment.thicknessU);
  const layer = garment.layer;
  filling.add('refLayer', layer?.thicknessMm ?? 0, plain('garment-layer'), GIVEN, layer?.u ?? 0);
}

/** Numbers the rules give at this size, with what each does on a sheet. */
function addRuled(filling: Filling, request: FitRequest, sized: Rules): void {
  const { design, garment } = request;
  const add = (input: InputName, rule: RuleName, term: InputTerm): void =>
    filling.add(input, sized[rule], term, ofRule(rule));
  add('ordinaryThickness', 'ordinary-thickness', plain('ordinary-fabric'));
  add('hipEaseMost', 'hip-ease-most', plain('hip-ease'));
  add('regionEase', 'region-ease', plain('region-ease'));
  add('wristRoom', 'wrist-room', plain('wrist-room'));
  add('armholeRoom', 'armhole-room', plain('armhole-room'));
  if (request.body?.figure === 'man') add('hipBelowWaist', 'hip-below-waist-man', plain('hip-below-waist'));
  add('neckFromShoulders', 'neck-from-shoulders', plain('left-for-shoulders'));
  if (design.neckline === 'boat') {
    add('boatShoulders', 'boat-shoulders', plain('left-for-shoulders'));
    add('boatDepth', 'boat-depth', plain('boat-depth'));
  }
  for (const { input, rule } of CONSTRUCTIONS[design.construction].ruled) add(input, rule, plain(rule));
  // These enter checks alone, and no dimension's reasons.
  filling.set('shoulderLeast', sized['shoulder-least']);
  add('bodyBelow', 'body-below-underarm', { code: 'rule-length', params: { rule: 'body-below-underarm' } });
  filling.set('sleeveBelow', sized['sleeve-below-underarm']);
  filling.set('bustLine', sized['bust-line-below-scye']);
  const byRule = (input: InputName, rule: RuleName): void =>
    add(input, rule, { code: 'rule-length', params: { rule } });
  byRule('underarmRoom', 'underarm-room');
  byRule('bandMost', 'band-most');
  byRule('bandLeast', 'band-least');
  byRule('ribMost', 'rib-most');
  byRule('ribLeast', 'rib-least');
  byRule('openingLeast', 'opening-least');
  byRule('openingMost', 'opening-most');
  add('bandDepth', 'band-depth', plain('band-depth'));
  add('ribDepth', 'rib-depth', plain('rib-depth'));
  filling.set('neckWidening', sized['neck-widened-more']);
  add('crewRoom', 'crew-neck-room', { code: 'neck-room', params: { scoop: false } });
  if (design.length !== 'custom' && design.length !== 'as-garment') {
    const whose = request.body?.figure === 'man' ? 'man' : kappaFigure(request.body) ? 'child' : 'woman';
    add('lengthOffset', `length-${whose}-${design.length}`, {
      code: 'named-length',
      params: { length: design.length },
    });
  }
  const scoop = design.neckline === 'scoop';
  const room = sized['crew-neck-room'] + (scoop ? sized['scoop-wider'] : 0);
  filling.add('neckRoom', room, { code: 'neck-room', params: { scoop } }, ofRule('crew-neck-room'));
  const deeper = scoop ? sized['scoop-deeper'] : 0;
  filling.add('neckDeeper', deeper, plain('scoop-depth'), ofRule('scoop-deeper'));
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
  const ofGarment = input === 'refDeeper';
  const term: InputTerm = { code: 'construction-depth', params: { construction, ofGarment } };
  const rule = CONSTRUCTIONS[construction].deeper;
  if (rule === null) filling.add(input, 0, term, CHOSEN);
  else filling.add(input, sized[rule], term, ofRule(rule));
}

function addChosen(filling: Filling, request: FitRequest, sized: Rules): void {
  const { design, fabric } = request;
  const layer = design.layer;
  filling.add('thickness', fabric.thicknessMm, plain('fabric'), fabric.source, fabric.thicknessU);
  filling.add('layer', layer?.thicknessMm ?? 0, plain('layer'), GIVEN, layer?.u ?? 0);

  const { ease } = design;
  if ('as' in ease) filling.add('easeChange', ease.changeMm, plain('ease-change'), CHOSEN);
  else {
    const category = 'category' in ease ? ease.category : null;
    const chosen = chosenEase(ease, easeBands(sized));
    filling.add('chosenEase', chosen, { code: 'ease', params: { category } }, easeSource(ease));
  }
  const orRule = (input: InputName, own: number | null, rule: RuleName, term: InputTerm): void =>
    filling.add(input, own ?? sized[rule], term, own === null ? ofRule(rule) : CHOSEN);
  orRule('frontBand', design.frontBandMm, 'front-band-width', plain('front-band'));
  const overlap = design.overlapMm ?? design.frontBandMm;
  orRule('overlap', overlap, 'front-band-width', plain('band-overlap'));
  const own = (input: InputName, value: number | null, term: InputTerm): void => {
    if (value !== null) filling.add(input, value, term, CHOSEN);
  };
  own('ownBand', design.bandMm, plain('band-depth'));
  own('ownRib', design.ribMm, plain('rib-depth'));
  own('ownCuff', design.cuffWidthMm, plain('own-cuff'));
  own('ownOpening', design.opening?.lengthMm ?? null, plain('own-opening'));
  own('customLength', design.customLengthMm, plain('own-length'));
  own('ownNeckWidth', design.neckWidthMm, plain('own-neck-width'));
  own('ownFrontNeck', design.frontNeckDepthMm, plain('own-front-neck-depth'));
  own('ownBackNeck', design.backNeckDepthMm, plain('own-back-neck-depth'));
}

/** What the body, and with it the ease of a garment, was found from; the model where no garment was evidence. */
function evidenceOf({ body }: FitRequest): Source {
  const found = Object.values(body?.values ?? {}).find(({ from }) => from.code === 'evidence');
  return found?.from ?? ESTIMATED;
}

/** Fills in every input from what the maker gave and the rules at her size. `madeInputs` come from pieces already made. */
export function inputsOf(
  request: FitRequest,
  sized: Rules,
  madeInputs: ReadonlyMap<InputName, { readonly value: number; readonly term: InputTerm }>,
): Inputs {
  const filling = new Filling();
  if (request.body) {
    addBody(filling, request.body);
    addSafety(filling, request.body);
  }
  addStiff(filling, request, sized);
  if (request.garment) {
    const { ease, title } = request.garment;
    filling.add('garmentEase', ease.value, { code: 'garment-ease', params: { title } }, evidenceOf(request), ease.u);
    addGarment(filling, request.garment);
  }
  addRuled(filling, request, sized);
  addChosen(filling, request, sized);
  for (const [name, made] of madeInputs) filling.add(name, made.value, made.term, MADE);
  return filling;
}
