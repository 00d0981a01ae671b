import type { LookupAddress } from 'node:dns';
import { describe, expect, it } from 'vitest';
import { AddressPolicy } from './address-policy.ts';
import { checkedLookup } from './checked-lookup.ts';

const strict = AddressPolicy.allowing('');
const publicOnly = (address: string): boolean => strict.allows(address);
const v4 = (address: string): LookupAddress => ({ address, family: 4 });

/** Looks a name up as a socket does; the resolver answers the given lists, one after the other. */
function lookUp(answers: LookupAddress[][], all = true): Promise<LookupAddress[] | string> {
  const resolve = checkedLookup(publicOnly, (_name, done) => done(null, answers.shift() ?? []));
  return new Promise((settle) =>
    resolve('planner.example', { all }, (error, found) =>
      settle(error ? String(error.code) : (found as LookupAddress[] | string)),
    ),
  );
}

describe('checkedLookup', () => {
  it('hands on the public addresses and no other', async () => {
    expect(await lookUp([[v4('10.0.0.1'), v4('8.8.8.8'), v4('127.0.0.1')]])).toEqual([v4('8.8.8.8')]);
    expect(await lookUp([[v4('10.0.0.1'), v4('8.8.8.8')]], false)).toBe('8.8.8.8');
  });

  it('fails where there is none, or no address at all', async () => {
    expect(await lookUp([[v4('10.0.0.1'), { address: '::1', family: 6 }]])).toBe('EADDRESSCLOSED');
    expect(await lookUp([[]])).toBe('EADDRESSCLOSED');
  });

  it('looks at every answer anew: a name that changes gains nothing', async () => {
    const answers = [[v4('8.8.8.8')], [v4('127.0.0.1')]];
    expect(await lookUp(answers)).toEqual([v4('8.8.8.8')]);
    expect(await lookUp(answers)).toBe('EADDRESSCLOSED');
  });
});
