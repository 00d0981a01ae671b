import { describe, expect, it } from 'vitest';
import { StartError } from '../../settings/start-error.ts';
import { AddressPolicy } from './address-policy.ts';

const strict = AddressPolicy.allowing('');

describe('AddressPolicy', () => {
  it.each([
    '8.8.8.8',
    '1.1.1.1',
    '172.15.0.1',
    '172.32.0.1',
    '192.167.0.1',
    '2606:4700:4700::1111',
    '2a00:1450:4001::1',
  ])('lets the public address %s pass', (address) => expect(strict.allows(address)).toBe(true));

  it.each([
    ['127.0.0.1', 'loopback (RFC 1122)'],
    ['127.255.255.254', 'loopback'],
    ['::1', 'loopback (RFC 4291)'],
    ['0.0.0.0', 'this host (RFC 1122)'],
    ['0.1.2.3', 'this network'],
    ['::', 'unspecified'],
    ['10.0.0.1', 'private (RFC 1918)'],
    ['172.16.0.1', 'private'],
    ['172.31.255.255', 'private'],
    ['192.168.1.1', 'private'],
    ['100.64.0.1', 'carrier-grade NAT (RFC 6598)'],
    ['169.254.169.254', 'link-local (RFC 3927), where clouds keep their keys'],
    ['fe80::1', 'link-local (RFC 4291)'],
    ['fe80::1%eth0', 'link-local with a zone'],
    ['fc00::1', 'unique local (RFC 4193)'],
    ['fd12:3456::1', 'unique local'],
    ['fec0::1', 'site-local (RFC 3879)'],
    ['224.0.0.1', 'multicast (RFC 5771)'],
    ['ff02::1', 'multicast (RFC 4291)'],
    ['255.255.255.255', 'broadcast'],
    ['240.0.0.1', 'reserved (RFC 1112)'],
    ['192.0.0.1', 'protocol assignments (RFC 6890)'],
    ['192.0.2.1', 'documentation (RFC 5737)'],
    ['198.18.0.1', 'benchmarking (RFC 2544)'],
    ['2001:db8::1', 'documentation (RFC 3849)'],
    ['100::1', 'discard (RFC 6666)'],
    ['::ffff:127.0.0.1', 'IPv4-mapped (RFC 4291)'],
    ['::ffff:8.8.8.8', 'IPv4-mapped, though the IPv4 is public'],
    ['::ffff:7f00:1', 'IPv4-mapped in hexadecimal'],
    ['::127.0.0.1', 'IPv4-compatible (RFC 4291, deprecated)'],
    ['::ffff:0:127.0.0.1', 'IPv4-translated (RFC 2765)'],
    ['64:ff9b::127.0.0.1', 'NAT64 (RFC 6052)'],
    ['64:ff9b:1::7f00:1', 'NAT64, local use (RFC 8215)'],
    ['2002:7f00:1::', '6to4 of 127.0.0.1 (RFC 3056)'],
    ['2001:0:7f00:1::1', 'Teredo (RFC 4380)'],
    ['4000::1', 'not given out'],
    ['example.org', 'no address'],
    ['', 'nothing'],
  ])('closes %s: %s', (address) => {
    expect(strict.allows(address)).toBe(false);
    expect(strict.allowsUnencrypted(address)).toBe(false);
  });

  it('opens what the operator allows, and nothing beside it', () => {
    const policy = AddressPolicy.allowing('loopback, 192.168.7.0/24');
    expect(['127.0.0.1', '::1', '192.168.7.9'].map((each) => policy.allows(each))).toEqual([true, true, true]);
    expect(['192.168.8.9', '10.0.0.1', '::ffff:127.0.0.1'].map((each) => policy.allows(each))).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('lets only the machine itself be reached unencrypted, and only where it is allowed', () => {
    const policy = AddressPolicy.allowing('loopback, 192.168.7.0/24');
    expect(policy.allowsUnencrypted('127.0.0.1')).toBe(true);
    expect(['192.168.7.9', '8.8.8.8'].map((each) => policy.allowsUnencrypted(each))).toEqual([false, false]);
  });

  it('stops the start on what is no range', () => {
    expect(() => AddressPolicy.allowing('192.168.1.1')).toThrow(StartError);
    expect(() => AddressPolicy.allowing('localhost')).toThrow('“localhost” is neither');
  });
});
