import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity } from '#measure';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import { requestOf, type Differs } from '../../../../tests/support/fit-samples.ts';
import { compute, type Computed } from '../evaluation/compute.ts';
import { INPUTS } from '../model/inputs.ts';
import { rulesWith } from '../design/rules.ts';
import { tracedModel } from './traced-model.ts';

const computed = (differs: Differs = {}): Computed => compute(requestOf(differs));
const CHOICES = computed().choices;

const isQuantity = (each: object): each is Quantity =>
  'kind' in each && ['input', 'sum', 'applied', 'root'].includes(each.kind as string);

/** Every quantity in a record, with the way to it. */
function quantitiesOf(record: object, way = ''): (readonly [way: string, of: Quantity])[] {
  if (isQuantity(record)) return [[way, record]];
  return Object.entries(record).flatMap(([name, each]: [string, unknown]) =>
    typeof each === 'object' && each !== null ? quantitiesOf(each, `${way}/${name}`) : [],
  );
}

describe('the model of some choices', () => {
  it('is one for equal ones, and another for others', () => {
    const model = tracedModel(CHOICES);
    expect(tracedModel(structuredClone(CHOICES))).toBe(model);
    expect(tracedModel({ ...CHOICES, neckline: 'v' })).not.toBe(model);
    expect(tracedModel({ ...CHOICES, rules: rulesWith({ 'armhole-ease': 0.2 }) })).not.toBe(model);
  });

  it('is made anew for equal ones after many others, and stays with those it was made for', () => {
    const model = tracedModel(CHOICES);
    for (let i = 1; i <= 64; i++) tracedModel({ ...CHOICES, usable: { ...CHOICES.usable, rib: i / 100 } });
    expect(tracedModel(CHOICES)).toBe(model);
    expect(tracedModel(structuredClone(CHOICES))).not.toBe(model);
  });

  it('can evaluate every quantity of the garment, and of its checks', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const { model, evaluation } = compute(request);
        const all = quantitiesOf({ garment: model.garment, checks: model.checks.map(({ traced }) => traced) });
        expect(all.length).toBeGreaterThan(60);
        for (const [way, of] of all) {
          expect(evaluation.value(of), way).toBeTypeOf('number');
          expect(evaluation.uncertainty(of), way).toBeTypeOf('number');
        }
      }),
      { numRuns: 60 },
    );
  });

  it('knows every quantity of a garment whose inputs are all known', () => {
    const { model, evaluation } = computed({ design: { construction: 'set-in', silhouette: 'cardigan' } });
    const lost = quantitiesOf(model.garment).filter(([, of]) => Number.isNaN(evaluation.value(of)));
    expect(lost.map(([way]) => way)).toEqual([]);
  });
});

describe('the numbers of a model', () => {
  const { model } = computed({ design: { construction: 'raglan' } });
  const everywhere = [
    ...model.assembled.map((each) => ['assembled', each] as const),
    ...model.pieces.flatMap(({ piece, dimensions }) => dimensions.map((each) => [piece, each] as const)),
  ];

  it('are all dimensions of the garment and its pieces, each with its place', () => {
    expect(model.placed.map(({ piece, planned }) => [piece, planned])).toEqual(everywhere);
    const places = model.placed.map(({ piece, planned }) => `${piece}/${planned.name}`);
    expect(new Set(places).size).toBe(places.length);
  });

  it('are in the order of the outputs that follow', () => {
    const { layout } = model;
    const followers = layout.followers(INPUTS.chest);
    expect(followers.length).toBeGreaterThan(0);
    for (const { output, place } of followers)
      expect(layout.tape.place(model.placed[output]!.planned.quantity)).toBe(place);
  });
});

/** What is solved is not solved again when a number of the sheet is rounded. */
describe('what is solved', () => {
  const follow = (differs: Differs, by: (garment: Computed['model']['garment']) => Quantity): string[] => {
    const { model, evaluation } = computed(differs);
    return evaluation.followers(by(model.garment)).map(({ output }) => {
      const { piece, planned } = model.placed[output]!;
      return `${piece}/${planned.name}`;
    });
  };

  it('stays: a cap beside its armhole, a raglan’s rise on the sleeve, a neck’s depth beside its width', () => {
    const cap = follow({ design: { construction: 'set-in' } }, ({ armhole }) => armhole.depth);
    expect(cap).toContain('back/armhole-depth');
    expect(cap).not.toContain('sleeve/cap-height');
    const rise = follow({ design: { construction: 'raglan' } }, ({ armhole }) => armhole.depth);
    expect(rise).toContain('front/raglan-depth');
    expect(rise).not.toContain('sleeve/sleeve-raglan-depth');
    const neck = follow({}, (garment) => garment.neck.width);
    expect(neck).toContain('back/neck-width');
    expect(neck).not.toContain('assembled/front-neck-depth');
  });
});

describe('the checks of a model', () => {
  it('are there for what the design has, and null for what it has not', () => {
    const present = (differs: Differs): string[] =>
      computed(differs).model.checks.flatMap(({ rule, traced }) => (traced ? rule.check : []));
    expect(present({ design: { silhouette: 'vest' } })).not.toContain('hand-through-cuff');
    expect(present({ design: { silhouette: 'cardigan' } })).not.toContain('head-through-neck');
    expect(present({})).toEqual(expect.arrayContaining(['hand-through-cuff', 'head-through-neck', 'armhole', 'hip']));
    expect(present({ design: { length: 'cropped' } })).not.toContain('hip');
  });

  it('have a margin that is what there is less what is needed', () => {
    const { model, evaluation } = computed();
    for (const { traced } of model.checks) {
      if (!traced) continue;
      const [need, have, margin] = [traced.need, traced.have, traced.margin].map(evaluation.value);
      expect(margin).toBeCloseTo(have! - need!, 9);
    }
  });

  it('limit rounding unless they are of comfort', () => {
    const { model } = computed();
    const { linear, nonlinear } = model.layout.constrained(INPUTS.chest);
    const limiting = new Set([...linear, ...nonlinear]);
    const names = model.checks
      .filter(({ traced }) => traced && limiting.has(traced.margin))
      .map(({ rule }) => rule.check);
    expect(names).toContain('over-the-shoulders');
    expect(names).not.toContain('sleeve-taper');
  });
});
