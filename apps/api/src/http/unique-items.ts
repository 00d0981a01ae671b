import { ValidateBy, isObject, type ValidationArguments } from 'class-validator';

/** Which list an element was read from, so that it can be compared with the others. */
const listOf = new WeakMap<object, readonly object[]>();

/** Every element is an object (an array in an array passes `@ValidateNested` unseen). Lets `UniqueAmongItems` see the list. */
export function EachIsObject(): PropertyDecorator {
  return ValidateBy({
    name: 'eachIsObject',
    validator: {
      validate: (list: unknown) => {
        if (!Array.isArray(list) || wrongItems(list).length > 0) return false;
        for (const item of list as object[]) listOf.set(item, list as object[]);
        return true;
      },
      defaultMessage: (args?: ValidationArguments) =>
        `every item must be an object: { … }; not so: item ${wrongItems(args?.value as unknown[])
          .slice(0, 5)
          .join(', ')}`,
    },
  });
}

function wrongItems(list: readonly unknown[]): number[] {
  return list.flatMap((item, index) => (isObject(item) ? [] : [index]));
}

/** Refuses an element that names what an earlier one names already, by the properties given. */
export function UniqueAmongItems(...keys: readonly string[]): PropertyDecorator {
  const duplicate = (args?: ValidationArguments): number => {
    const item = args?.object as Record<string, unknown>;
    const items = (listOf.get(item) ?? []) as readonly Record<string, unknown>[];
    return items.slice(0, items.indexOf(item)).findIndex((other) => keys.every((key) => other[key] === item[key]));
  };
  return ValidateBy({
    name: 'uniqueAmongItems',
    validator: {
      validate: (_: unknown, args?: ValidationArguments) => duplicate(args) === -1,
      defaultMessage: (args?: ValidationArguments) =>
        `“${String(args?.value)}” is given already, in item ${duplicate(args)}; give it once`,
    },
  });
}
