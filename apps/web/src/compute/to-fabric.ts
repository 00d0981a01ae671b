import { fabricFromRecord, resolveFabric, type Fabric, type FabricInput, type FabricRecord } from '#fabric';
import { DomainError } from '#measure';
import type { say } from '../messages.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import { yarnAsWritten } from '../reading/yarn-record.ts';
import { memoizeLast } from './memoize-last.ts';

/** An ordinary fabric stands in until something is known of the yarn (mm; assumed: worsted stockinette). */
const ORDINARY = { thicknessMm: 3, thicknessU: 1 };

/** What of a yarn may be out of all reach. */
type WrongOfYarn = keyof typeof say.yarn.wrong;

interface ReadFabric {
  readonly input: FabricInput;
  /** Resolved from what was written; null while too little is known, and then `input` is an ordinary fabric. */
  readonly fabric: Fabric | null;
  /** What the store takes: nothing but name and craft of a yarn that is not known. */
  readonly record: FabricRecord;
  /** What cannot be right. */
  readonly wrong: WrongOfYarn | null;
  /** True where only the fibre is missing beside the metres. */
  readonly lacksFibre: boolean;
}

export const toFabric = memoizeLast((notes: YarnNotes): ReadFabric => {
  const record = yarnAsWritten(notes);
  const written = fabricFromRecord(record);
  try {
    return { input: written, fabric: resolveFabric(written), record, wrong: null, lacksFibre: false };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const plain = { ...written, stretch: null, ribStretch: null, growth: null, massPerAreaGsm: null };
    const wrong = error.code === 'thickness-unknown' ? null : (error.pointer.split('/')[1] as WrongOfYarn);
    const lacksFibre = wrong === null && written.metresPer100g !== null;
    return {
      input: { ...(wrong === null ? written : plain), ...ORDINARY },
      fabric: null,
      record: { title: record.title ?? '', craft: record.craft },
      wrong,
      lacksFibre,
    };
  }
});
