import { memo } from 'react';
import type { BodyDimension, BodyProfile } from '#body';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { shownValue } from './shown-value.ts';

/** A value nobody measured: in pencil, with a dashed line under it and the word "about". */
export const Pencilled = memo(function Pencilled({
  profile,
  dimension,
  tape,
}: {
  readonly profile: BodyProfile | null;
  readonly dimension: BodyDimension;
  readonly tape: Tape;
}) {
  const found = shownValue(profile, dimension, tape);
  if (found !== null) return <em className="pencilled">{say.body.estimate(...found.bare, found.high)}</em>;
  return profile === null ? ' ' : say.body.noEstimate;
});
