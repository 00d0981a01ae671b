import { derive, type Columns } from './columns.ts';
import { mappingOf } from './mappings.ts';
import type { MeasureName, Sex } from './names.ts';

/** How a measure is made from a survey's columns, mm (weight: g). */
interface FromColumns {
  readonly columns: readonly string[];
  readonly of: (...values: number[]) => number;
}

interface TradeMeasure {
  readonly name: MeasureName;
  readonly in1988: FromColumns;
  readonly in2012: FromColumns | null;
}

const itself = (column: string): FromColumns => ({ columns: [column], of: (value) => value });
const inBoth = (name: MeasureName, in1988: string, in2012: string): TradeMeasure => ({
  name,
  in1988: itself(in1988),
  in2012: itself(in2012),
});
const in1988Only = (name: MeasureName, columns: readonly string[], of: FromColumns['of']): TradeMeasure => ({
  name,
  in1988: { columns, of },
  in2012: null,
});

const tenthsOfKilogram = (column: string): FromColumns => ({ columns: [column], of: (value) => 100 * value });
const first = (value: number) => value;
const sum = (a: number, b: number) => a + b;
const half = (a: number, b: number) => (a + b) / 2;

/**
 * The survey's side of every dimension. Waist lengths end midway between the natural waist and the navel (mappings.ts says why); the survey's
 * WAIST_HIP_LNTH starts at the navel (its mean is that of navel height less buttock height, and not of natural waist height less it).
 */
const MEASURES: readonly TradeMeasure[] = [
  inBoth('stature', 'STATURE', 'stature'),
  { name: 'weight', in1988: tenthsOfKilogram('WEIGHT'), in2012: tenthsOfKilogram('weightkg') },
  inBoth('chest-girth', 'CHEST_CIRC', 'chestcircumference'),
  inBoth('hip-girth', 'BUTTOCK_CIRC', 'buttockcircumference'),
  inBoth('neck-base-girth', 'NECK_CIRC-BASE', 'neckcircumferencebase'),
  inBoth('across-back', 'BIACROMIAL_BRTH', 'biacromialbreadth'),
  inBoth('shoulder-length', 'SHOULDER_LNTH', 'shoulderlength'),
  inBoth('shoulder-girth', 'SHOULDER_CIRC', 'shouldercircumference'),
  inBoth('arm-length', 'SLEEVE-OUTSEAM_LNTH', 'sleeveoutseam'),
  {
    name: 'underarm-length',
    in1988: {
      columns: ['ACR-RADL_LNTH', 'RADIALE-STYLION_LNTH', 'ACROMION_HT', 'AXILLA_HT'],
      of: (upper, lower, acromion, axilla) => upper! + lower! - (acromion! - axilla!),
    },
    in2012: {
      columns: ['acromionradialelength', 'radialestylionlength', 'acromialheight', 'axillaheight'],
      of: (upper, lower, acromion, axilla) => upper! + lower! - (acromion! - axilla!),
    },
  },
  {
    name: 'back-hip-length',
    in1988: { columns: ['WAIST_OMPH_LNTH', 'WAIST_HIP_LNTH'], of: sum },
    in2012: {
      columns: ['waistbacklength', 'waistheightomphalion', 'buttockheight'],
      of: (back, navel, buttock) => back! + navel! - buttock!,
    },
  },
  inBoth('forearm-girth', 'FOREARM_CIRC-FLEXED', 'forearmcircumferenceflexed'),
  inBoth('wrist-girth', 'WRIST_CIRC-STYLION', 'wristcircumference'),
  inBoth('hand-girth', 'HAND_CIRC_AT_METACARPALE', 'handcircumference'),
  inBoth('head-girth', 'HEAD_CIRC', 'headcircumference'),
  inBoth('navel-girth', 'WAIST_CIRC-OMPHALION', 'waistcircumference'),
  inBoth('navel-back-length', 'WAIST_OMPH_LNTH', 'waistbacklength'),
  inBoth('flexed-arm-girth', 'ARMCIRCBCPS_FLEX', 'bicepscircumferenceflexed'),
  in1988Only('underbust-girth', ['CHEST_CIRC-BELOW_BUST_'], first),
  in1988Only('waist-girth', ['WAIST_CIRC_NATURAL'], first),
  in1988Only('back-waist-length', ['WAIST_NAT_LNTH', 'WAIST_OMPH_LNTH'], half),
  in1988Only(
    'front-waist-length',
    ['NECK_TO_BUSTPOINT_LNTH', 'CHEST_HT', 'WAIST_HT_NATURAL', 'WAIST_HT-OMPHALION'],
    (neckToBust, bust, natural, navel) => neckToBust! + bust! - half(natural!, navel!),
  ),
  in1988Only(
    'waist-to-hip',
    ['WAIST_HIP_LNTH', 'WAIST_NATURAL_TO_WAIST_UMBILICUS'],
    (navelToHip, naturalToNavel) => navelToHip + naturalToNavel / 2,
  ),
  in1988Only('scye-depth', ['SCYE_DEPTH'], first),
  in1988Only('scye-girth', ['SCYE_CIRC_OVER_ACROMION'], first),
  in1988Only('upper-arm-girth', ['ARM_CIRC-AXILLARY'], first),
];

/** Women's head girth was taken over braids in 2012 (the data's own notes): theirs is the 1988 survey's alone. */
const withheld2012 = (name: MeasureName, sex: Sex) => name === 'head-girth' && sex === 'woman';

/** A survey's rows in the trade's measures. `nape-to-cuff` is half the trade's across-back and the arm, never the survey's spine to wrist. */
export function tradeMeasures(columns: Columns, survey: 1988 | 2012, sex: Sex): Columns {
  const measures: Record<string, readonly number[]> = {};
  for (const { name, in1988, in2012 } of MEASURES) {
    const from = survey === 1988 ? in1988 : in2012;
    if (from === null || (survey === 2012 && withheld2012(name, sex))) continue;
    const { scale, offset } = mappingOf(name, sex);
    measures[name] = derive(columns, from.columns, (...values) => scale * from.of(...values) + offset);
  }
  measures['nape-to-cuff'] = derive(measures, ['across-back', 'arm-length'], (back, arm) => back! / 2 + arm!);
  return measures;
}
