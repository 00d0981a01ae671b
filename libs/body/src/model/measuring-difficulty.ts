import type { BodyDimension } from '../body-dimension.ts';

/** 1: easy alone; 2: with a mirror or some care; 3: a second person is needed. */
export type MeasuringDifficulty = 1 | 2 | 3;

/** How hard each dimension is to measure on oneself (assumed), easiest first. */
export const MEASURING_DIFFICULTY: Readonly<Record<BodyDimension, MeasuringDifficulty>> = {
  stature: 1,
  weight: 1,
  'wrist-girth': 1,
  'hand-girth': 1,
  'head-girth': 1,
  'waist-girth': 1,
  'hip-girth': 1,
  'underbust-girth': 1,
  'forearm-girth': 1,
  'upper-arm-girth': 1,
  'chest-girth': 2,
  'neck-base-girth': 2,
  'underarm-length': 2,
  'shoulder-length': 2,
  'arm-length': 2,
  'waist-to-hip': 2,
  'front-waist-length': 2,
  'scye-girth': 2,
  'nape-to-cuff': 3,
  'back-waist-length': 3,
  'back-hip-length': 3,
  'scye-depth': 3,
  'across-back': 3,
  'shoulder-girth': 3,
};
