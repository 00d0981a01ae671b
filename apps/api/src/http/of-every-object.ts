/** Whether every object has a property of this name, so that it cannot be the name of a field: `constructor`, `toString`. */
export const isOfEveryObject = (name: string): boolean => name in Object.prototype || name === 'prototype';
