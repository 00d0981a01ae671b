import ipaddr from 'ipaddr.js';
import { StartError } from '../../settings/start-error.ts';

type Range = ReturnType<typeof ipaddr.parseCIDR>;
type Address = Range[0];

/** What the operator can allow by a word: the addresses of this very machine. */
const WORDS: Readonly<Record<string, readonly string[]>> = { loopback: ['127.0.0.0/8', '::1/128'] };

/** The part of IPv6 from which public addresses are given out (RFC 4291, section 2.4, and IANA's registry). */
const GLOBAL_IPV6 = ipaddr.parseCIDR('2000::/3');

/**
 * To which addresses a hand-off may go: public ones, and those the operator allows. Private, loopback, link-local,
 * multicast, reserved and tunnelled ranges (IPv4 within IPv6 in any of its forms) are closed unless allowed.
 */
export class AddressPolicy {
  private constructor(private readonly allowed: readonly Range[]) {}

  /** Reads what is allowed: the word `loopback` and ranges such as `192.168.1.0/24`, a comma between. @throws StartError */
  static allowing(text: string): AddressPolicy {
    const parts = text.split(',').map((part) => part.trim());
    return new AddressPolicy(parts.filter(Boolean).flatMap((part) => (WORDS[part] ?? [part]).map(readRange)));
  }

  /** Whether a connection may be opened to this address, written as a number. */
  allows(text: string): boolean {
    if (!ipaddr.isValid(text)) return false;
    const address = ipaddr.parse(text);
    return this.isAllowedByOperator(address) || isPublic(address);
  }

  /** Whether it may go unencrypted: to this very machine, where the operator allows it. */
  allowsUnencrypted(text: string): boolean {
    if (!ipaddr.isValid(text)) return false;
    const address = ipaddr.parse(text);
    return address.range() === 'loopback' && this.isAllowedByOperator(address);
  }

  private isAllowedByOperator(address: Address): boolean {
    return this.allowed.some(([base, bits]) => base.kind() === address.kind() && address.match(base, bits));
  }
}

const isPublic = (address: Address): boolean =>
  address.range() === 'unicast' && (address.kind() === 'ipv4' || address.match(...GLOBAL_IPV6));

function readRange(text: string): Range {
  try {
    return ipaddr.parseCIDR(text);
  } catch {
    throw new StartError(`HANDOFF_ALLOW: “${text}” is neither “loopback” nor a range such as 192.168.1.0/24.`);
  }
}
