import type { FabricSource } from './fabric-messages.ts';
import type { Craft, Fabric, FabricInput } from './fabric.ts';
import { usualMetres } from './usual-metres.ts';
import { texOf } from './yarn-diameter.ts';
import { weightOf } from './weight-of.ts';
import { categoriesOfWraps, YARN_WEIGHTS, type YarnWeight } from './yarn-weights.ts';

/** A value with its standard uncertainty. */
interface WithU {
  readonly value: number;
  readonly u: number;
}

/** The yarn that an area of fabric takes: grams, and metres where the yarn's length by its weight is known. */
export interface YarnUse {
  /** m² */
  readonly area: number;
  readonly massG: WithU;
  readonly lengthM: WithU | null;
  readonly from: FabricSource;
}

/** How heavy a fabric is, and how long its yarn, with their relative uncertainties. */
interface Weight {
  readonly gramsPerM2: number;
  readonly relativeU: number;
  readonly metresPer100g: { readonly value: number; readonly relativeU: number } | null;
  readonly from: FabricSource;
}

/**
 * Grams a square metre for the square root of the tex. A relaxed plain knit has k/l² stitches a square of side l, k = 20, l the
 * yarn in a stitch (Munden, J. Text. Inst. 50, 1959, from memory), and hand knitters take √tex/l near 10 with l in cm (assumed):
 * 10 × 20/10.
 */
const GRAMS_PER_ROOT_TEX = 20;
/** A crocheted fabric takes about a third more yarn (practice). */
const OF_CRAFT: Readonly<Record<Craft, number>> = { knit: 1, crochet: 4 / 3 };
/** Grams a square metre and a millimetre of thickness: 450 g/m² at 2.5 mm (assumed). */
const GRAMS_PER_MM = 180;

/** A swatch's weight and sides; the label; the weight category; the thickness alone (assumed). */
const RELATIVE_U = { swatch: 0.05, label: 0.2, category: 0.25, thickness: 0.4 } as const;
/** Metres on a label, and those usual for a category (assumed). */
const LENGTH_U = { label: 0.03, category: 0.2 } as const;
/** What the making adds to a piece's area (assumed). */
const AREA_U = 0.03;

/**
 * The yarn that an area, mm², takes, by the most trusted thing known: the swatch's weight, the metres on the label, the weight
 * category (or that of the wraps), the thickness. What is left over or spare is not in it.
 */
export function yarnUse(areaMm2: number, input: FabricInput, { thicknessMm }: Pick<Fabric, 'thicknessMm'>): YarnUse {
  const { gramsPerM2, relativeU, metresPer100g, from } = weightOfFabric(input, thicknessMm);
  const mass = weightOf(areaMm2, gramsPerM2);
  const massU = mass * Math.hypot(relativeU, AREA_U);
  const length = metresPer100g && (mass * metresPer100g.value) / 100;
  return {
    area: areaMm2 / 1e6,
    massG: { value: mass, u: massU },
    lengthM:
      metresPer100g && length !== null
        ? { value: length, u: length * Math.hypot(relativeU, AREA_U, metresPer100g.relativeU) }
        : null,
    from,
  };
}

function weightOfFabric(input: FabricInput, thicknessMm: number): Weight {
  const { craft, massPerAreaGsm } = input;
  const usual = categoryOf(input);
  const label = input.metresPer100g === null ? null : { value: input.metresPer100g, relativeU: LENGTH_U.label };
  const ofCategory = usual && { value: usualMetres(usual), relativeU: LENGTH_U.category };
  const metresPer100g = label ?? ofCategory;
  if (massPerAreaGsm !== null)
    return {
      gramsPerM2: massPerAreaGsm,
      relativeU: RELATIVE_U.swatch,
      metresPer100g,
      from: { code: 'swatch-weight', params: {} },
    };
  if (metresPer100g !== null)
    return {
      gramsPerM2: GRAMS_PER_ROOT_TEX * Math.sqrt(texOf(metresPer100g.value)) * OF_CRAFT[craft],
      relativeU: label ? RELATIVE_U.label : RELATIVE_U.category,
      metresPer100g,
      from: label
        ? { code: 'yarn-on-label', params: { metresPer100g: label.value } }
        : {
            code: 'usual-yarn',
            params: { category: usual!.category, name: usual!.name, metresPer100g: ofCategory!.value },
          },
    };
  return {
    gramsPerM2: GRAMS_PER_MM * thicknessMm,
    relativeU: RELATIVE_U.thickness,
    metresPer100g: null,
    from: { code: 'usual-density', params: { thicknessMm } },
  };
}

/** The category that was given, or the thicker of those in whose bands the wraps lie. */
function categoryOf({ weightCategory, wrapsPerInch }: FabricInput): YarnWeight | null {
  if (weightCategory !== null) return YARN_WEIGHTS.weights[weightCategory] ?? null;
  return wrapsPerInch === null ? null : (categoriesOfWraps(wrapsPerInch).at(-1) ?? null);
}
