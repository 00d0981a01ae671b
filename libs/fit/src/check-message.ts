import type { Verdict } from './advice.ts';
import { CURES, type Situation } from './check-cures.ts';
import { type CheckRule, isComfort } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import type { CheckCode, CheckCodes, CheckFinding, CheckMessage } from './messages/check-codes.ts';
import type { Cure } from './messages/cure.ts';
import { NONE } from './messages/none.ts';
import { worstEdges } from './seams.ts';
import { type Row, S } from './slots.ts';

/** What comes of a check whose numbers are known: unknown only where a stretch that was not measured could make good what is missing. */
export type Found = Exclude<Verdict, 'n/a'>;

/** Of these neither how much is missing nor how much is to spare tells anything. */
const WITHOUT_MARGIN: ReadonlySet<CheckCode> = new Set([
  'cuff-stays',
  'negative-ease',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
  'seam',
  'raglan-rises',
  'nape-to-cuff',
]);

/** What a check is about in this garment. */
export function codeOf({ check }: CheckRule, comfort: boolean, v: Row, d: Decisions): CheckCode {
  if (check === 'seam' && comfort) return 'raglan-rises';
  const ofShoulder = d.construction !== 'raglan' && v[S.spareOfShoulder]! < v[S.spareBesideNeck]!;
  return check === 'neck-on-shoulders' && ofShoulder ? 'shoulder-beside-neck' : check;
}

/** What came of a check whose numbers are known: for `fails` and `tight` with what to change, for `unknown` with how to know the fabric. */
export function messageFor(rule: CheckRule, verdict: Found, at: Situation): CheckMessage {
  const code = codeOf(rule, isComfort(rule, at.d), at.v, at.d);
  if (verdict === 'fine') return { code, params: { finding: 'holds' } };
  return {
    code,
    params: {
      finding: findingOf(verdict, at),
      marginMm: WITHOUT_MARGIN.has(code) ? null : at.margin,
      of: rule.girth ? 'girth' : 'length',
      uncertain: at.uncertain,
      cures: verdict === 'unknown' ? ['measure-stretch'] : curesFor(code, at),
      details: detailsOf(code, at),
    },
  } as CheckMessage;
}

function findingOf(verdict: Exclude<Found, 'fine'>, { margin, uncertain }: Situation) {
  if (verdict === 'unknown') return 'unless-it-stretches';
  if (margin < 0) return 'fails';
  return uncertain === null ? 'barely' : 'uncertain';
}

/** Measuring comes before any change of the design, where it may do. */
function curesFor(code: CheckCode, at: Situation): Cure[] {
  if (at.uncertain === null) return CURES[code](at);
  if (code === 'sleeve-taper') return ['measure-that-to-be-sure'];
  if (code === 'front-and-back') return ['measure-that-before-short-rows'];
  return ['measure-that', ...CURES[code](at)];
}

type Details<Finding> = Finding extends CheckFinding<infer D> ? D : never;

function detailsOf(code: CheckCode, { v, d, margin }: Situation): Details<CheckCodes[CheckCode]> {
  switch (code) {
    case 'cuff-stays':
      return { widerMm: margin > -d.rules['length-room'] ? null : -margin };
    case 'negative-ease':
      return { overLayer: v[S.layer]! > 0 };
    case 'seam':
      return { edges: worstEdges(v, d), differMm: v[S.seamNeed]! };
    case 'nape-to-cuff':
      return { pastMm: v[S.cuffPast]! };
    default:
      return NONE;
  }
}
