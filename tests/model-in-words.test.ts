/** The worked example of docs/model.md, number by number, against what the model computes for the same request. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { adviceOn, bodyOf, fabricOf, dimension, mm, WOMAN } from './support/fit-samples.ts';

const DOCUMENT = readFileSync(new URL('../docs/model.md', import.meta.url), 'utf8');
const EXAMPLE = DOCUMENT.slice(DOCUMENT.indexOf('## A drop shoulder worked through'));

/** The dimensions that each row of the table gives. */
const PATHS: Readonly<Record<string, readonly string[]>> = {
  'chest width': ['chest-width'],
  'panel `p`': ['back/width'],
  'length `L`': ['centre-back-length'],
  'armhole `A`': ['armhole-depth'],
  'sleeve’s top': ['sleeve/sleeve-top-width'],
  neck: ['neck-width', 'front-neck-depth', 'back-neck-depth'],
  'opening `P`': ['neck-opening'],
  'neck on the piece': ['back/neck-width'],
  shoulder: ['back/shoulder-width'],
  'hem to underarm': ['body-to-underarm'],
  sleeve: ['sleeve-length'],
  'cuff’s piece': ['sleeve/cuff-width'],
};

const rows = [...EXAMPLE.matchAll(/^\| ([^|]+?) +\| [^|]+ +\| ([\d., ]+?) +\|$/gm)].map(
  ([, label, numbers]) => [label!.replace("'", '’'), numbers!.split(', ').map(Number)] as const,
);

describe('the worked example of the model', () => {
  it('gives every number that it is meant to', () => {
    expect(rows.map(([label]) => label)).toEqual(Object.keys(PATHS));
  });

  it.each(rows)('has the %s that the model has', (label, numbers) => {
    const advice = adviceOn();
    expect(numbers).toEqual(PATHS[label]!.map((path) => Math.round(mm(advice, path) * 10) / 10));
  });

  it('has the range and the uncertainty of the width', () => {
    const { value, low, high } = dimension(adviceOn(), 'chest-width');
    const [, down, up] = /rounded down by ([\d.]+) and up by ([\d.]+)/.exec(EXAMPLE)!;
    expect([value! - low!, high! - value!]).toEqual([Number(down), Number(up)].map((each) => expect.closeTo(each, 6)));
    const { u } = dimension(
      adviceOn({ body: bodyOf(WOMAN, 'woman', { 'chest-girth': 15 }), fabric: fabricOf(3) }),
      'chest-width',
    );
    expect(u).toBeCloseTo(Math.hypot(7.5, 0.6), 9);
  });
});
