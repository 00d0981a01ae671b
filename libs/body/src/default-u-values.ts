import type { How } from '#measure';
import type { BodyDimension } from './body-dimension.ts';

/** A standard uncertainty, mm (weight: g), and where it is from. */
type UValue = readonly [u: number, source: string];

const KUSHI = 'derived from published reliability coefficients (Kushi et al. 1988; Barrios et al. 2016)';
const WAIST = `${KUSHI}: 17 to 26, near its middle; a waist taken alone can be off by 6 cm (Contardo Ayala et al. 2014)`;
const TAPE_LENGTH = 'assumed: 10 to 15 for a length taken at home, its lower end';
const home = (like: string) => `assumed: as ${like} at home`;

/** Taken alone, with a tape. */
const HOME: Readonly<Record<BodyDimension, UValue>> = {
  stature: [10, TAPE_LENGTH],
  weight: [1000, 'assumed: household scales, clothed'],
  'chest-girth': [15, 'assumed: 15 to 20 for a bust taken at home, its lower end'],
  'underbust-girth': [15, home('the chest')],
  'waist-girth': [20, WAIST],
  'hip-girth': [15, KUSHI],
  'neck-base-girth': [8, KUSHI],
  'across-back': [10, TAPE_LENGTH],
  'shoulder-length': [10, TAPE_LENGTH],
  'back-waist-length': [10, TAPE_LENGTH],
  'front-waist-length': [10, TAPE_LENGTH],
  'back-hip-length': [10, TAPE_LENGTH],
  'nape-to-cuff': [10, TAPE_LENGTH],
  'arm-length': [10, TAPE_LENGTH],
  'underarm-length': [10, TAPE_LENGTH],
  'scye-depth': [10, TAPE_LENGTH],
  'scye-girth': [17, home('the upper arm')],
  'upper-arm-girth': [17, KUSHI],
  'forearm-girth': [10, 'assumed: between the upper arm and the wrist at home'],
  'wrist-girth': [5, KUSHI],
  'hand-girth': [5, home('the wrist')],
  'head-girth': [8, home('the neck base')],
  'waist-to-hip': [10, TAPE_LENGTH],
  'shoulder-girth': [20, 'assumed: a girth over both arms that nobody can take alone'],
};

const G1 = 'half the allowable observer error, Hotzman et al. 2011, NATICK/TR-11/017, Table G-1';
const g1 = (allowable: number, entry: string): UValue => [allowable / 2, `${G1}: ${entry}`];
const noG1 = (u: number, like: string): UValue => [u, `assumed: as ${like}, no entry in Table G-1`];

/** Taken by someone trained, on another person: half of Table G-1, the entry named as it is there. */
const TRAINED: Readonly<Record<BodyDimension, UValue>> = {
  stature: g1(6, 'stature'),
  weight: g1(300, 'weightkg'),
  'chest-girth': g1(14, 'chestcircumference'),
  'underbust-girth': noG1(7, 'the chest'),
  'waist-girth': g1(12, 'waistcircumference'),
  'hip-girth': g1(12, 'buttockcircumference'),
  'neck-base-girth': g1(8, 'neckcircumferencebase'),
  'across-back': g1(13, 'interscyeii'),
  'shoulder-length': g1(3, 'shoulderlength'),
  'back-waist-length': g1(5, 'waistbacklength'),
  'front-waist-length': g1(7, 'waistfrontlengthsitting'),
  'back-hip-length': noG1(5, 'twice the back waist, for the hip level is harder to find'),
  'nape-to-cuff': g1(9, 'sleevelengthspinewrist'),
  'arm-length': g1(6, 'sleeveoutseam'),
  'underarm-length': noG1(3, 'the arm'),
  'scye-depth': noG1(5, 'twice the back waist, for the armpit level is harder to find'),
  'scye-girth': noG1(6, 'the waist'),
  'upper-arm-girth': g1(6, 'bicepscircumferenceflexed'),
  'forearm-girth': g1(5, 'forearmcircumferenceflexed'),
  'wrist-girth': g1(3, 'wristcircumference'),
  'hand-girth': g1(3, 'handcircumference'),
  'head-girth': g1(3, 'headcircumference'),
  'waist-to-hip': noG1(5, 'twice the back waist, for both its ends are levels'),
  'shoulder-girth': g1(12, 'shouldercircumference'),
};

const SURVEYS = 'ANSUR II (NATICK/TR-15/007) and ANSUR I (NATICK/TR-89/044)';
const RESIDUAL = `derived: what stature and weight leave open in ${SURVEYS}, the larger of both sexes, × 1.25 for other people`;
const residual = (sd: number): UValue => [1.25 * sd, RESIDUAL];
const guess = (u: number): UValue => [u, 'assumed: a guess, no better than that of a like measure'];

/** A value its maker estimated and gave as such. The body model's own estimates bring their own u and never ask here. */
const ESTIMATED: Readonly<Record<BodyDimension, UValue>> = {
  stature: guess(50),
  weight: guess(6000),
  'chest-girth': residual(42.7),
  'underbust-girth': guess(50),
  'waist-girth': residual(33.3),
  'hip-girth': guess(45),
  'neck-base-girth': residual(16.3),
  'across-back': guess(20),
  'shoulder-length': residual(9.6),
  'back-waist-length': residual(20.8),
  'front-waist-length': guess(26),
  'back-hip-length': guess(30),
  'nape-to-cuff': guess(25),
  'arm-length': residual(18.4),
  'underarm-length': guess(23),
  'scye-depth': residual(13.6),
  'scye-girth': guess(25),
  'upper-arm-girth': residual(18.8),
  'forearm-girth': guess(15),
  'wrist-girth': residual(6.0),
  'hand-girth': residual(7.9),
  'head-girth': residual(17.8),
  'waist-to-hip': guess(25),
  'shoulder-girth': guess(40),
};

const RMS = 'derived: RMS error of the table read by chest, women of ANSUR I (NATICK/TR-89/044)';
const rms = (u: number): UValue => [u, RMS];
const spread = (sd: number): UValue => [sd, `derived: spread of all men or women in ${SURVEYS}, the larger`];
const wide = (u: number): UValue => [u, 'assumed: people of one size differ by this much'];
const formula = (u: number): UValue => [u, 'assumed: as the formula for a child (child-formulas.ts)'];

/** How far people who read the same row of a size table stand from it. */
const TABLE: Readonly<Record<BodyDimension, UValue>> = {
  stature: wide(60),
  weight: wide(6000),
  'chest-girth': [15, 'derived: even spread over a size of 2 in, 50.8/√12 = 14.7'],
  'underbust-girth': wide(40),
  'waist-girth': rms(32.6),
  'hip-girth': rms(46.8),
  'neck-base-girth': formula(15),
  'across-back': wide(20),
  'shoulder-length': spread(10.5),
  'back-waist-length': spread(27.7),
  'front-waist-length': wide(30),
  'back-hip-length': wide(35),
  'nape-to-cuff': wide(30),
  'arm-length': spread(30.8),
  'underarm-length': wide(25),
  'scye-depth': rms(15.2),
  'scye-girth': formula(32),
  'upper-arm-girth': rms(23.5),
  'forearm-girth': wide(18),
  'wrist-girth': formula(8),
  'hand-girth': formula(10),
  'head-girth': formula(15),
  'waist-to-hip': wide(30),
  'shoulder-girth': formula(30),
};

export const DEFAULT_U: Readonly<Record<How, Readonly<Record<BodyDimension, UValue>>>> = {
  home: HOME,
  trained: TRAINED,
  estimated: ESTIMATED,
  table: TABLE,
};
