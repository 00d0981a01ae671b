/**
 * The checks that limit rounding, worked out from the numbers of a sheet by the text of the model, apart from the code that makes sheets:
 * what each needs and has, mm (negative ease: ratios).
 */
import type { BodyDimension } from '#body';
import type { Advice, CheckName, FitRequest } from '#fit';

/** The numbers of a sheet by `piece/name`. */
type SheetNumbers = ReadonlyMap<string, number>;

export function numbersOf({ assembled, pieces }: Advice): Map<string, number> {
  const places = [{ piece: 'assembled', dimensions: assembled }, ...pieces];
  return new Map(
    places.flatMap(({ piece, dimensions }) =>
      dimensions.flatMap(({ name, value }) => (value === null ? [] : [[`${piece}/${name}`, value] as const])),
    ),
  );
}

/** Half an ellipse. Source: S. Ramanujan (1914), as the model says. */
const halfEllipse = (w: number, d: number): number => {
  const a = w / 2;
  return (Math.PI / 2) * (3 * (a + d) - Math.sqrt((3 * a + d) * (a + 3 * d)));
};
const edgeOf = (v: boolean, w: number, front: number, back: number): number =>
  (v ? 2 * Math.hypot(w / 2, front) : halfEllipse(w, front)) + halfEllipse(w, back);

const PLACES = { none: 0, shoulder: 2, shoulders: 4, back: 2, front: 2 };

/** What a check needs, and what the garment has. */
type Compared = readonly [need: number, have: number];

/** By how much each check holds. */
export const sparesOf = (request: FitRequest, advice: Advice, n: SheetNumbers): Partial<Record<CheckName, number>> =>
  Object.fromEntries(
    Object.entries(comparedOn(request, advice, n)).map(([name, [need, have]]) => [name, have - need] as const),
  );

export function comparedOn(request: FitRequest, advice: Advice, n: SheetNumbers): Partial<Record<CheckName, Compared>> {
  const { body, fabric, design } = request;
  const { construction, ease, opening } = advice.design;
  const m = (name: BodyDimension): number => body!.values[name]!.value;
  const at = (place: string): number => n.get(place) ?? NaN;
  const t = fabric.thicknessMm;
  const young = body!.figure === 'child' || body!.figure === 'baby';
  const kappa = young ? Math.min(1, m('chest-girth') / 920) : 1;
  const s = design.layer?.thicknessMm ?? 0;
  const sArm = design.layer && design.layer.sleeves !== 'none' ? s : 0;
  const stretched = 1 + fabric.mainUsable;
  const close = ease.chosen! < (50 * (1 + kappa)) / 2 ? stretched : 1;
  const ribStretched = design.bandMm === 0 ? stretched : 1 + fabric.ribUsable;
  const compared: Partial<Record<CheckName, Compared>> = {};

  const bodyInner = 2 * at('assembled/chest-width') - 4 * t;
  const hemInner = 2 * at('assembled/hem-width') - 4 * t;
  const band = at('assembled/band-depth');
  const [w, frontDepth, backDepth] = ['neck-width', 'front-neck-depth', 'back-neck-depth'].map((name) =>
    at(`assembled/${name}`),
  ) as [number, number, number];
  if (design.silhouette !== 'cardigan') {
    const v = design.neckline === 'v';
    const raglan = construction === 'raglan';
    let onPiece = frontDepth + band;
    if (v) {
      const k = (2 * band) / (w + 2 * band);
      onPiece = (frontDepth + Math.sqrt(k * k * frontDepth ** 2 + (1 - k * k) * band ** 2)) / (1 - k * k);
    }
    const edge = raglan
      ? edgeOf(v, w + 2 * band, onPiece, backDepth + band)
      : edgeOf(v, at('back/neck-width'), at('front/front-neck-depth'), at('back/back-neck-depth'));
    const through = ribStretched * edgeOf(v, w, frontDepth, backDepth);
    const passes = fabric.stretch === null ? through : Math.min(through, stretched * edge);
    const open = opening.at === 'none' ? 0 : PLACES[opening.at] * at('assembled/opening-length');
    compared['head-through-neck'] = [m('head-girth'), passes + open];
    const girth = m('chest-girth') + Math.max(0, m('shoulder-girth') - m('chest-girth')) / 4 + 2 * Math.PI * s;
    compared['over-the-shoulders'] = [girth, stretched * Math.min(bodyInner, hemInner)];
  }
  compared.hip = [m('hip-girth') + 2 * Math.PI * s, stretched * hemInner];
  compared['negative-ease'] = [(m('chest-girth') + 2 * Math.PI * s) / bodyInner - 1, fabric.mainUsable];
  const shoulder = construction === 'raglan' ? Infinity : at('back/shoulder-width') - 30 * kappa;
  compared['neck-on-shoulders'] = [0, Math.min(m('across-back') - 60 * kappa - w, shoulder)];
  compared['body-below-underarm'] = [at('assembled/rib-depth') + 20 * kappa, at('back/body-to-underarm')];
  if (construction !== 'raglan') {
    const A = at('assembled/armhole-depth');
    const i = (at('back/width') - at('assembled/cross-back-width')) / 2;
    const bands = design.silhouette === 'vest' ? band : 0;
    const b = at('back/underarm-bind-off') - bands;
    const h = Math.min(0.4 * A, 80);
    const half =
      construction === 'set-in' ? b + Math.hypot(i - b, h) + A - h : construction === 'squared-drop' ? A + i : A;
    compared.armhole = [m('scye-girth') + 2 * Math.PI * sArm, close * (2 * half - Math.PI * t)];
  }
  if (design.silhouette !== 'vest') {
    const top = at('sleeve/sleeve-top-width');
    const seam = construction === 'drop-shoulder' || construction === 'squared-drop';
    compared['hand-through-cuff'] = [
      1.12 * m('hand-girth'),
      (1 + fabric.ribUsable) * (at('sleeve/cuff-width') - Math.PI * t),
    ];
    compared['upper-arm'] = [m('upper-arm-girth') + 2 * Math.PI * sArm, close * (top - (seam ? 4 : Math.PI) * t)];
    compared['sleeve-below-underarm'] = [at('assembled/rib-depth') + 40 * kappa, at('sleeve/underarm-seam')];
  }
  return compared;
}
