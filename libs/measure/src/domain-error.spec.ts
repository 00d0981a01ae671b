import { expect, it } from 'vitest';
import { DomainError } from './domain-error.ts';

it('grows its pointer at the front', () => {
  const error = new DomainError('length-unreadable', { text: '44 x' }, '/value').under('/measures/0').under('/body');
  expect(error).toBeInstanceOf(DomainError);
  expect(error).toMatchObject({
    name: 'DomainError',
    code: 'length-unreadable',
    params: { text: '44 x' },
    pointer: '/body/measures/0/value',
  });
});

it('keeps the parameters, which may be body measurements, out of its message', () => {
  expect(new DomainError('measure-out-of-range', { valueMm: 912.5 }, '/value').message).not.toContain('912');
});
