import { getMetadataStorage } from 'class-validator';

/**
 * class-validator looks through every class it knows for each object it validates, which was a twentieth of a request's work.
 * What it finds hangs on the class alone, for nothing here is validated by groups; so it is found once, and grouped once.
 */
export function rememberMetadata(): void {
  const storage = getMetadataStorage();
  const find = storage.getTargetValidationMetadatas.bind(storage);
  const group = storage.groupByPropertyName.bind(storage);
  const found = new WeakMap<object, ReturnType<typeof find>>();
  const grouped = new WeakMap<object, ReturnType<typeof group>>();
  storage.getTargetValidationMetadatas = (target, ...rest) =>
    // A query may call one of its parameters `constructor`: then it is a text.
    typeof target === 'function'
      ? (found.get(target) ?? kept(found, target, find(target, ...rest)))
      : find(target, ...rest);
  storage.groupByPropertyName = (metadata) => grouped.get(metadata) ?? kept(grouped, metadata, group(metadata));
}

function kept<T>(by: WeakMap<object, T>, key: object, made: T): T {
  by.set(key, made);
  return made;
}
