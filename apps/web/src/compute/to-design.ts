import { designFromRecord, type DesignWish } from '#fit';
import type { DesignNotes } from '../notebook/notebook.ts';
import { toDesignRecord } from '../reading/design-record.ts';
import { memoizeLast } from './memoize-last.ts';

export const toDesign = memoizeLast((notes: DesignNotes): DesignWish => designFromRecord(toDesignRecord(notes)));
