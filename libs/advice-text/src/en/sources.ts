import { ruleSource, type SourceCodes } from '#fit';
import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import { bodySources } from './body-sources.ts';
import { fabricSources } from './fabric.ts';

/** Where a number is from, after it or in brackets. */
export const sources: Catalogue<SourceCodes> = {
  ...bodySources,
  ...fabricSources,
  chosen: () => 'chosen',
  given: () => 'given',
  model: () => 'the model',
  solved: () => 'solved, u by central differences',
  'made-piece': () => 'a piece already made',
  rule: ({ rule }) => ruleSource(rule),
  'common-practice': () => 'common practice',
  'practice-and-law-for-children': () => 'common practice; local law and standards for children’s clothes decide',
  // "2(t − t₀), t measured, t₀ assumed", "−1.571t + 2t₀, …"
  'fabric-beside-ordinary': ({ share, ordinaryShare, fabric }, reader) => {
    const ordinary =
      share === -ordinaryShare ? '(t − t₀)' : `t ${ordinaryShare < 0 ? '−' : '+'} ${coefficient(ordinaryShare)}t₀`;
    const from = say(sources, fabric, reader);
    return `${share < 0 ? '−' : ''}${coefficient(share)}${ordinary}, t ${from}, t₀ assumed`;
  },
};

/** A share before a letter, without its sign: a one is not written. */
function coefficient(share: number): string {
  const size = Math.abs(share);
  return size === 1 ? '' : String(size);
}
