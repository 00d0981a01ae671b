import type { MissingReason } from '#advice-text';
import type { TargetSheet } from '#target-sheet';
import { lookUpIn } from './look-up.ts';
import type { Needs } from './sheet-dimension.ts';

/** A required name the sheet has no value for, why, and the measures to take so that it has. */
export interface MissingName {
  readonly name: string;
  readonly reason: MissingReason;
  readonly needs: Needs;
}

/** Those of the names that a sheet has no value for. */
export function missingNames(sheet: TargetSheet, names: readonly string[]): MissingName[] {
  const lookUp = lookUpIn(sheet);
  return names.flatMap((name) => {
    const found = lookUp(name);
    return 'value' in found ? [] : [{ name, reason: found.reason, needs: found.needs }];
  });
}
