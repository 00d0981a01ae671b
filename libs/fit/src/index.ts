export * from './design.ts';
export * from './advice.ts';
