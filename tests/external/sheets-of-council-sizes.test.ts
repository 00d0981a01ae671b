/**
 * Source: Craft Yarn Council, Standards & Guidelines for Crochet and Knitting, women's sizes XS to 5X and fit chart
 * (values from memory): a drop shoulder with classic ease in its middle, in an ordinary fabric.
 */
import { describe, expect, it } from 'vitest';
import { resolveBody, rowBodyMeasures, sizeTable } from '#body';
import { adviceOn, fabricOf, mm } from '../support/fit-samples.ts';

const MM_PER_INCH = 25.4;

describe.each(sizeTable('craft-yarn-council-woman').rows.map((row) => ({ size: row.size, row })))(
  '$size',
  ({ row }) => {
    const measures = rowBodyMeasures(row);
    const value = (name: string): number => measures.find((measure) => measure.name === name)!.value;
    const body = resolveBody({ figure: 'woman', ageYears: null, measures }, { estimate: false });
    const advice = adviceOn({ body, fabric: fabricOf(3), design: { length: 'cropped' } });

    it('half the panel and the sleeve are its neck to cuff', () => {
      expect(mm(advice, 'back/width') / 2 + mm(advice, 'sleeve/sleeve-length')).toBeCloseTo(value('nape-to-cuff'), 6);
    });

    it('its finished bust is its bust and 2 to 4 inches', () => {
      const over = (2 * mm(advice, 'chest-width') - value('chest-girth')) / MM_PER_INCH;
      expect(over).toBeGreaterThanOrEqual(50 / MM_PER_INCH);
      expect(over).toBeLessThanOrEqual(4);
    });

    it('gives no advice for the neck, which the table does not hold', () => {
      expect(advice.assembled.find(({ name }) => name === 'neck-width')?.noAdvice?.needs).toContain('neck-base-girth');
    });
  },
);
