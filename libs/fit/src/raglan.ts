import type { Decisions } from './decisions.ts';
import { S } from './slots.ts';
import type { Steps } from './steps.ts';

/** Length of a slanting edge, mm, from how far it runs across and rises. */
const slant = (run: number, rise: number): number => Math.sqrt(run * run + rise * rise);

/** How far an edge of that length rises that runs so far across, mm; NaN where none does. */
const riseOf = (edge: number, run: number): number => Math.sqrt(edge * edge - run * run);

/**
 * The raglan edges of body and sleeve: how far each runs across, the body's depth, and the sleeve's rise
 * that joins it. The body is kept and the sleeve solved; where a sleeve was made before its body, the other way round.
 * The front is the back with the neck cut into it.
 */
export function raglanSteps(steps: Steps, d: Decisions): void {
  const { rules, silhouette } = d;
  const neckShare = rules['raglan-neck-share'];
  const vest = silhouette === 'vest';
  steps.sum(S.bindOff, [rules['raglan-bind-off-share'], S.panel]);
  steps.sum(S.raglanNeck, [neckShare, S.pieceNeckWidth]);
  steps.sum(S.raglanRun, [0.5, S.panel], [-0.5, S.raglanNeck], [-1, S.bindOff]);
  steps.sum(S.raglanTopOfNeck, [rules['raglan-top-neck-share'], S.pieceNeckWidth]);
  steps.sum(S.raglanTopOfSleeve, [rules['raglan-top-sleeve-share'], S.sleeveGirth]);
  steps.smaller(S.raglanTop, S.raglanTopOfNeck, S.raglanTopOfSleeve);
  steps.sum(S.raglanSleeveRun, [0.5, S.sleeveGirth], [-1, S.raglanTop], [-1, S.bindOff]);

  raglanDepthSteps(steps, d);
  // A vest's armhole band lies below the raglan, so its piece goes down by as much as the neck band takes off.
  steps.sum(S.pieceRaglan, [1, S.raglan], [vest ? 0 : -1, S.band]);
  steps.solved(S.raglanEdge, slant, S.raglanRun, S.pieceRaglan);
  steps.sum(S.raglanCut, [1, S.pieceFrontNeck], [-1, S.pieceBackNeck]);
  // A front neck shallower than the back's is not cut at all: the piece ends there.
  steps.bent(S.raglanFrontNeck, S.raglanCut, 0, 1);
}

function raglanDepthSteps(steps: Steps, { made, silhouette }: Decisions): void {
  if (made.armhole) steps.sum(S.raglan, [1, S.madeArmhole], [silhouette === 'vest' ? 0 : 1, S.band]);
  else if (made.sleeveRaglan)
    steps.solved(
      S.raglan,
      (bodyRun, sleeveRun, sleeveRise, band) => riseOf(slant(sleeveRun, sleeveRise), bodyRun) + band,
      S.raglanRun,
      S.raglanSleeveRun,
      S.madeSleeveRaglan,
      S.band,
    );
  else steps.sum(S.raglan, [1, S.armholeBase], [1, S.armholeDeeper]);
}

/** The rise of the sleeve's raglan edge, made or solved, and the whole edge's length. */
export function raglanSleeveSteps(steps: Steps, { made }: Decisions): void {
  steps.sum(S.capTop, [2, S.raglanTop]);
  if (made.sleeveRaglan) steps.same(S.sleeveRaglan, S.madeSleeveRaglan);
  else steps.solved(S.sleeveRaglan, riseOf, S.raglanEdge, S.raglanSleeveRun);
  steps.solved(S.raglanSleeveEdge, slant, S.raglanSleeveRun, S.sleeveRaglan);
}
