import { FORMAT, VERSION, type AdviceInWords, type TargetSheet } from '#target-sheet';
import { childCardigan } from './child-cardigan.ts';
import { pullover } from './pullover.ts';

const asSheet = (advice: AdviceInWords, title: string, thickness: number): TargetSheet => ({
  format: FORMAT,
  version: VERSION,
  id: '01890a5d-ac96-774b-bcce-b302099a8057',
  createdAt: '2026-01-01T12:00:00Z',
  title,
  unit: 'mm',
  craft: 'knit',
  stitch: null,
  rulesVersion: '1',
  design: advice.design,
  fabric: { thickness, u: 0.3, from: 'measured', stretch: null, growth: { across: 0, along: 0.02 } },
  assembled: advice.assembled,
  pieces: advice.pieces,
  checks: advice.checks,
  collisions: advice.collisions,
  cautions: advice.cautions,
  notes: advice.notes,
});

/** Hand-made sheets in mm: a drop-shoulder pullover, and a child’s raglan cardigan whose neck has no advice. */
export const pulloverSheet = asSheet(pullover, 'Grey pullover', 6);
export const cardiganSheet = asSheet(childCardigan, 'Small cardigan', 4);
export const sampleSheets: readonly TargetSheet[] = [pulloverSheet, cardiganSheet];
