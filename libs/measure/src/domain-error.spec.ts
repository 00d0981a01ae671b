import { expect, it } from 'vitest';
import { assertNever } from './assert-never.ts';
import { DomainError } from './domain-error.ts';
import { errorsOf } from './errors-of.ts';

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

it('has its code for a message, and its place where it has one', () => {
  expect(new DomainError('length-unreadable', {})).toMatchObject({ message: 'length-unreadable', pointer: '' });
  expect(new DomainError('length-unreadable', {}, '/value').message).toBe('length-unreadable at /value');
  expect(errorsOf<{ broken: object }>()('broken', {})).toMatchObject({ code: 'broken', pointer: '' });
});

it('is not what a value has that no case is for', () => {
  expect(() => assertNever('felt' as never)).toThrow('Not one of the known: "felt"');
});
