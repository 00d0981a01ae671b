import type { Comparison } from './compare.ts';
import type { HiddenNumber, Observation } from './observation.ts';
import type { Innovations } from './innovations.ts';

/** What has to be asked: an observation that contradicts the tape, or two sources that contradict one another. */
export type Contradiction =
  | { readonly between: 'tape'; readonly observation: Comparison }
  | {
      readonly between: 'sources';
      readonly id: string;
      readonly sources: readonly [string, string];
      /** The second source's observation less the first's, what both are expected to be taken off, and its u; mm. */
      readonly difference: number;
      readonly u: number;
    };

/** The evidence as it counts until its contradictions are answered. */
interface WeighedEvidence {
  readonly hidden: readonly HiddenNumber[];
  readonly observations: readonly Observation[];
  readonly contradictions: readonly Contradiction[];
}

/** Further apart than so many standard uncertainties, two things contradict one another. */
const FAR = 2;

/** The standard deviation of a hidden number whose prior is dropped, mm: it may be anything. */
const ANYTHING = 1000;

const isFar = ({ difference, u }: { readonly difference: number; readonly u: number }) =>
  Math.abs(difference) > FAR * u;

/**
 * Until it is answered, the tape counts: an observation that contradicts it is left out; one that anchors a hidden number stays, and that number's prior is dropped.
 */
export function weighAgainstTape(
  hidden: readonly HiddenNumber[],
  observations: readonly Observation[],
  comparisons: readonly Comparison[],
): WeighedEvidence {
  const far = observations.map(({ confirmed }, i) => confirmed !== true && isFar(comparisons[i]!));
  const dropped = new Set(observations.flatMap(({ anchors }, i) => (far[i] && anchors !== undefined ? [anchors] : [])));
  return {
    hidden: hidden.map((one) => (dropped.has(one.name) ? { ...one, sd: ANYTHING } : one)),
    observations: observations.filter(({ anchors }, i) => !far[i] || anchors !== undefined),
    contradictions: comparisons.flatMap((observation, i) => (far[i] ? [{ between: 'tape', observation }] : [])),
  };
}

/**
 * Two sources whose observations of one id contradict one another both count for less until it is answered: τ of both is doubled; where they anchor a hidden number, whose
 * spread stands for theirs, so is that number's standard deviation (assumed).
 */
export function weighAgainstEachOther(
  hidden: readonly HiddenNumber[],
  observations: readonly Observation[],
  { differences, covariance }: Innovations,
): WeighedEvidence {
  const k = observations.length;
  const contradictions: Contradiction[] = [];
  const doubtful = new Set<Observation>();
  observations.forEach((one, i) => {
    for (let j = i + 1; j < k; j++) {
      const other = observations[j]!;
      if (one.id !== other.id || one.source === other.source || (one.confirmed && other.confirmed)) continue;
      const variance = covariance[i * (k + 1)]! + covariance[j * (k + 1)]! - 2 * covariance[i * k + j]!;
      const apart = { difference: differences[j]! - differences[i]!, u: Math.sqrt(variance) };
      if (!isFar(apart)) continue;
      contradictions.push({ between: 'sources', id: one.id, sources: [one.source, other.source], ...apart });
      doubtful.add(one).add(other);
    }
  });
  const widened = new Set([...doubtful].map(({ anchors }) => anchors));
  return {
    hidden: hidden.map((one) => (widened.has(one.name) ? { ...one, sd: 2 * one.sd } : one)),
    observations: observations.map((one) => (doubtful.has(one) ? { ...one, tau: 2 * one.tau } : one)),
    contradictions,
  };
}
