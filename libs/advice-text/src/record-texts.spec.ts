import { describe, expect, it } from 'vitest';
import { loadBodyModel, resolveBody, type Body, type BodyNote } from '#body';
import { resolveFabric, type FabricInput } from '#fabric';
import { noteWithText } from './note-with-text.ts';
import { text } from './text.ts';

const CM = { tape: 'cm' } as const;
const inch = (inches: number): number => inches * 25.4;
const body = (figure: Body['figure'], ageYears: number | null, chest?: number): Body => ({
  figure,
  ageYears,
  measures: chest === undefined ? [] : [{ name: 'chest-girth', value: chest, how: 'home' }],
});
const notesOf = (notes: readonly BodyNote[]): string[] => notes.map((note) => noteWithText('bodyNote', note, CM).text);

describe('what is said of a body', () => {
  it('names the size, and the gap between two', () => {
    expect(notesOf(resolveBody(body('woman', 40, inch(37)), { estimate: true }).notes)).toEqual([
      'A chest of 94 cm (37 in) is size M (36 to 38 in) of Craft Yarn Council, woman.',
    ]);
    expect(notesOf(resolveBody(body('woman', 40, inch(39)), { estimate: true }).notes)).toEqual([
      'A chest of 99 cm (39 in) lies between sizes M (36 to 38 in) and L (40 to 42 in) of Craft Yarn Council, woman, in neither; L is nearer and was read.',
    ]);
  });

  it('says where to look beyond a table', () => {
    const { notes } = resolveBody(body('child', null, inch(34)), { estimate: true });
    const sentence =
      'A chest of 86.5 cm (34 in) lies above 16 (32 1/2 in), the largest size of Craft Yarn Council, child: measure, or say a woman or a man.';
    expect(notesOf(notes)[0]).toBe(sentence);
  });

  it('says where a child’s values are from, and that its age was assumed', () => {
    const { notes, values, missing } = resolveBody(body('child', null, 635), { estimate: true });
    expect(notesOf(notes)[1]).toBe(
      'The age was not given; 6 years is taken from the size, for the head, the wrist and the hand.',
    );
    const from = (name: keyof typeof values): string => text('source', values[name]!.from, CM);
    expect(from('chest-girth')).toBe('measured at home');
    expect(from('across-back')).toBe('Craft Yarn Council, child 6 (read in a published page)');
    expect(from('neck-base-girth')).toBe('110 mm + 0.285 × chest girth (assumed)');
    expect(from('scye-girth')).toBe('2 × scye depth (assumed)');
    expect(from('wrist-girth')).toBe('108 mm + 3.2 mm a year, at 6 years (assumed)');
    expect(from('head-girth')).toBe('growth references, middle at 6 years (from memory)');
    expect(text('bodyMissing', missing.stature!, CM)).toBe('No published table gives it for a child: measure it.');
  });

  it('says what an estimate was made from, and whom the model was made from', async () => {
    const model = await loadBodyModel();
    const { values, notes } = resolveBody(body('woman', 66, 940), { estimate: true, estimator: model });
    expect(text('source', values['neck-base-girth']!.from, CM)).toBe(
      'estimated from chest girth (body model 2, US Army surveys of 1988 and 2012)',
    );
    expect(notesOf(notes)[0]).toMatch(/^Nobody over 58 is among those most estimates come from/);
    const large = resolveBody(body('woman', 40, 1500), { estimate: true, estimator: model });
    expect(notesOf(large.notes).at(-1)).toMatch(
      /^Nobody of this size or age is among those these estimates come from: stature, weight, /,
    );
  });

  it('asks in a sentence what a measure beside others is', async () => {
    const model = await loadBodyModel();
    const known = [
      { name: 'stature', value: 1650, u: 10 },
      { name: 'chest-girth', value: 370, u: 15 },
      { name: 'hip-girth', value: 990, u: 15 },
    ] as const;
    const [question] = model.questionsOf({ figure: 'woman', ageYears: 40, known });
    expect(text('bodyQuestion', question!, CM)).toBe(
      'The chest girth is smaller than the other measures lead one to expect. Were these inches, typed as centimetres?',
    );
  });
});

describe('what is said of a fabric', () => {
  const NOTHING: FabricInput = {
    craft: 'knit',
    stitch: null,
    thicknessMm: null,
    thicknessU: null,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
  };
  const knit = (known: Partial<FabricInput>) => resolveFabric({ ...NOTHING, ...known });
  const said = (known: Partial<FabricInput>): string[] =>
    knit(known).notes.map((note) => noteWithText('fabricNote', note, CM).text);

  it('is what its thickness is from', () => {
    const from = (known: Partial<FabricInput>): string => text('source', knit(known).source, CM);
    expect(from({ thicknessMm: 3 })).toBe('measured, four layers divided by four');
    expect(from({ wrapsPerInch: 10 })).toBe('10 wraps per inch, stockinette');
    expect(from({ metresPer100g: 200, fibre: 'wool' })).toBe('200 m per 100 g of wool, stockinette');
    expect(from({ weightCategory: 0 })).toBe('weight 0 (lace), stockinette');
  });

  it('is whether four layers were taken for one', () => {
    expect(said({ thicknessMm: 12, weightCategory: 4 })[0]).toBe(
      'The thickness, 12 mm, is 4.0 times what the yarn (weight 4 (medium), stockinette) gives. It is used as measured. If it is of four layers, divide it by four.',
    );
  });

  it('is in which bands the wraps lie', () => {
    const bands = (known: Partial<FabricInput>) => said(known).find((each) => / wraps per inch lie in /.test(each));
    expect(bands({ wrapsPerInch: 12 })).toBe(
      '12 wraps per inch lie in the bands of weights 2 (fine), 3 (light), 4 (medium), which overlap.',
    );
    expect(bands({ wrapsPerInch: 10 })).toBe('10 wraps per inch lie in the band of weight 4 (medium).');
    expect(bands({ wrapsPerInch: 4.5 })).toContain('no weight’s band');
    expect(bands({ wrapsPerInch: 12, weightCategory: 6 })).toContain('You gave weight 6; the wraps were used.');
  });

  it('is how thick its weight usually is, with the source', () => {
    const note = knit({ weightCategory: 0 }).notes.find(({ code }) => code === 'thickness-from-category')!;
    const { text: sentence, source } = noteWithText('fabricNote', note, CM);
    expect(source).toBe('assumed');
    expect(sentence).toMatch(/yarn’s weight 0 \(lace\), stockinette: no table has this weight, so it is assumed/);
  });
});
