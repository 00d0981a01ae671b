import { lookup as systemLookup, type LookupAddress } from 'node:dns';
import type { LookupFunction } from 'node:net';

/** The name leads to no address that may be connected to. */
export class AddressClosed extends Error {
  readonly code = 'EADDRESSCLOSED';
}

type Resolve = (name: string, done: (error: NodeJS.ErrnoException | null, addresses: LookupAddress[]) => void) => void;

const bySystem: Resolve = (name, done) => systemLookup(name, { all: true }, done);

/**
 * The look-up of a connection that is being opened: it hands on the addresses that may be connected to and no other.
 * The socket connects to just what it is given here, so a name that changes between a check and its use gains nothing.
 */
export function checkedLookup(mayConnect: (address: string) => boolean, resolve: Resolve = bySystem): LookupFunction {
  return (name, options, callback) => {
    resolve(name, (error, all) => {
      if (error) return callback(error, '', 0);
      const wanted = Number(String(options.family ?? 0).replace('IPv', ''));
      const open = all.filter(({ address, family }) => mayConnect(address) && (wanted === 0 || family === wanted));
      const [first] = open;
      if (first === undefined) return callback(new AddressClosed(`${name} leads to no address that is open`), '', 0);
      if (options.all) return callback(null, open);
      callback(null, first.address, first.family);
    });
  };
}
