import type { Quantity } from '#measure';
import type { Because } from '../messages/advice.ts';
import type { Computed } from './compute.ts';
import type { KnownInput } from '../inputs/inputs.ts';
import { NONE } from '../messages/none.ts';
import type { Source } from '../messages/source-codes.ts';
import type { InputTerm, TermCodes } from '../messages/term-codes.ts';
import { INPUTS } from '../model/inputs.ts';

/** A term while it is made: rounding is added to the last. */
type Growing = Pick<Because, 'code' | 'params' | 'u' | 'from'> & { value: number };

/** A derivative as it is shown: to three decimals. */
const shareOf = (derivative: number): number => Math.round(derivative * 1000) / 1000;

const MODEL: Source = { code: 'model', params: NONE };
const SOLVED: Source = { code: 'solved', params: NONE };

/**
 * Why a number is what it is: one term per independent input, adding up to it in value and in u². Every input is a
 * length, so doubling them all doubles every length that follows, and derivative × input sums to the number (Euler's
 * theorem on homogeneous functions). What is left is rounding, or a limit that the model keeps.
 * A number that is solved for, and not added up, is one term. `u` is the number's own uncertainty.
 */
export function because(of: Quantity, u: number, { model, inputs, evaluation }: Computed): Because[] {
  const value = evaluation.value(of);
  const solved = model.solved.get(of)?.(evaluation.value) ?? null;
  if (solved !== null) return [{ code: solved, params: NONE, value, u, from: SOLVED }];
  const terms: Growing[] = [];
  const ordinary = evaluation.derivative(of, INPUTS.ordinaryThickness);
  // The fabric's two coefficients are one term; where the new fabric drops out, the ordinary one stands alone.
  const merged = ordinary !== 0 && evaluation.derivative(of, INPUTS.thickness) !== 0;
  for (const dependency of evaluation.dependencies(of)) {
    const input = inputs.known[dependency.input];
    const derivative = evaluation.byInput(dependency);
    // What is nothing and certain adds no term.
    if (!input || derivative === 0 || (input.value === 0 && input.u === 0)) continue;
    if (merged && input.name === 'ordinaryThickness') continue;
    terms.push(
      merged && input.name === 'thickness'
        ? fabricTerm(input, derivative, ordinary, evaluation.value(INPUTS.ordinaryThickness))
        : inputTerm(input, derivative),
    );
  }
  return withRest(terms, value);
}

/** An input as one term of a sum. */
function inputTerm({ term, value, u, from }: KnownInput, derivative: number): Growing {
  const params = paramsWith(term, shareOf(derivative));
  return { code: term.code, params, value: derivative * value, u: Math.abs(derivative) * u, from };
}

/** The parameters of an input as one term of a sum. Written out where they are many: spreading them took half of the time of an advice. */
function paramsWith({ code, params }: InputTerm, share: number): Because['params'] {
  if (params === NONE) return { share };
  if (code === 'body-measure' || code === 'garment-measure')
    return { dimension: params.dimension, share } as Because['params'];
  if (code === 'ease') return { category: params.category, share };
  return { ...params, share } as Because['params'];
}

/** The fabric's thickness beside an ordinary one's. */
function fabricTerm({ value, u, from }: KnownInput, derivative: number, ofOrdinary: number, ordinary: number): Growing {
  const [share, ordinaryShare] = [shareOf(derivative), shareOf(ofOrdinary)];
  return {
    code: 'fabric-beside-ordinary',
    params: { compared: comparedFabric(share === -ordinaryShare, value, ordinary) },
    value: derivative * value + ofOrdinary * ordinary,
    u: Math.abs(derivative) * u,
    from: { code: 'fabric-beside-ordinary', params: { share, ordinaryShare, fabric: from } },
  };
}

/** Which fabric is the thicker decides, unless the two enter by different shares. */
function comparedFabric(
  sameShare: boolean,
  thickness: number,
  ordinary: number,
): TermCodes['fabric-beside-ordinary']['compared'] {
  if (!sameShare) return 'apart';
  if (thickness === ordinary) return 'alike';
  return thickness < ordinary ? 'thinner' : 'thicker';
}

/** Rounding goes to the last term; more than that is a limit, given as a term of its own. */
function withRest(terms: Growing[], value: number): Because[] {
  const rest = terms.reduce((left, term) => left - term.value, value);
  const last = terms[terms.length - 1];
  if (last && Math.abs(rest) <= 1e-4) last.value += rest;
  else if (rest !== 0) terms.push({ code: 'limit', params: NONE, value: rest, u: 0, from: MODEL });
  return terms as Because[];
}
