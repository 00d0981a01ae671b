import { expect, it } from 'vitest';
import { DomainError } from './domain-error.ts';

it('grows its pointer at the front', () => {
  const error = new DomainError('length-unreadable', 'why', '/value').under('/measures/0').under('/body');
  expect(error).toBeInstanceOf(DomainError);
  expect(error).toMatchObject({
    name: 'DomainError',
    code: 'length-unreadable',
    message: 'why',
    pointer: '/body/measures/0/value',
  });
});
