import type { RuleName, TermCodes } from '#fit';
import type { Construction } from '#garment';
import type { Catalogue } from '../catalogue.ts';
import { inWords } from './in-words.ts';

/** "half of chest girth", "less a quarter of ease, classic", "0.35 × ease, classic". */
const term = (share: number, label: string): string => `${share < 0 ? 'less ' : ''}${portion(Math.abs(share))}${label}`;

function portion(share: number): string {
  switch (share) {
    case 1:
      return '';
    case 0.5:
      return 'half of ';
    case 0.25:
      return 'a quarter of ';
    case 2:
      return 'twice ';
    default:
      return `${share} × `;
  }
}

const labelled =
  (label: string) =>
  ({ share }: { readonly share: number }): string =>
    term(share, label);

const extraDepth =
  (construction: string) =>
  (ofGarment: boolean): string =>
    ofGarment ? `the garment's extra depth as a ${construction}` : `extra depth of a ${construction}`;

/** How deep an armhole is beside a set-in one. */
const ARMHOLE_DEPTHS: Readonly<Record<Construction, (ofGarment: boolean) => string>> = {
  'drop-shoulder': extraDepth('drop shoulder'),
  'squared-drop': extraDepth('squared drop'),
  'set-in': () => 'set-in armhole',
  raglan: extraDepth('raglan'),
};

const THICKNESS = {
  thinner: 'thinner fabric than ordinary',
  alike: 'fabric as thick as ordinary',
  thicker: 'thicker fabric than ordinary',
  apart: 'fabric’s thickness beside an ordinary one’s',
} as const;

/** Lengths that rules give or limit. */
const RULED: Readonly<Partial<Record<RuleName, string>>> = {
  'underarm-room': 'room below the armpit',
  'band-most': 'the deepest band',
  'band-least': 'the shallowest band',
  'rib-most': 'the deepest rib',
  'rib-least': 'the shallowest rib',
  'body-below-underarm': 'plain body below the underarm',
  'opening-least': 'the shortest opening',
  'opening-most': 'the longest opening',
};

/** The reasons of a value, which add up to it. */
export const terms: Catalogue<TermCodes> = {
  'body-measure': ({ dimension, share }) => term(share, inWords(dimension)),
  'garment-measure': ({ dimension, share }) => term(share, `the garment's ${inWords(dimension)}`),
  'garment-fabric': labelled("the garment's own fabric"),
  'garment-layer': labelled('what is worn beneath the garment'),
  'garment-ease': ({ title, share }) =>
    term(share, title === '' ? 'ease of the garment that fits' : `ease of “${title}”`),
  'garment-back-neck': labelled("the garment's back neck, not measured"),
  fabric: labelled('fabric'),
  'ordinary-fabric': labelled('ordinary fabric'),
  layer: labelled('what is worn beneath'),
  ease: ({ category, share }) => term(share, category === null ? 'ease' : `ease, ${inWords(category)}`),
  'ease-change': labelled('wished change of ease'),
  'region-ease': labelled('for how that region wears'),
  'hip-ease': labelled('ease at the hip'),
  'wrist-room': labelled('room at the wrist'),
  'armhole-room': labelled('room below the scye'),
  'construction-depth': ({ construction, ofGarment, share }) => term(share, ARMHOLE_DEPTHS[construction](ofGarment)),
  'named-length': ({ length, share }) => term(share, `${length} length`),
  'own-length': labelled('chosen length'),
  'hip-below-waist': labelled('hip below the waist'),
  'left-for-shoulders': labelled('what the shoulders keep'),
  'neck-room': ({ scoop, share }) =>
    term(share, scoop ? 'room at the neck, and wider for a scoop' : 'room at the neck'),
  'scoop-depth': labelled('extra depth of a scoop'),
  'boat-depth': labelled('depth of a boat neck'),
  'own-neck-width': labelled('chosen neck width'),
  'own-front-neck-depth': labelled('chosen front neck depth'),
  'own-back-neck-depth': labelled('chosen back neck depth'),
  'squared-inset-most': labelled('the most it goes in'),
  'set-in-inset-least': labelled('the least it goes in'),
  'armhole-curve-most': labelled('height of the armhole’s curve'),
  'band-depth': labelled('band depth'),
  'front-band': labelled('front band'),
  'band-overlap': labelled('overlap of the bands'),
  'rib-depth': labelled('rib depth'),
  'own-cuff': labelled('chosen cuff width'),
  'own-opening': labelled('chosen opening'),
  'rule-length': ({ rule, share }) => term(share, RULED[rule] ?? 'a rule’s length'),
  'stiff-fabric': labelled('what a stiff fabric takes'),
  'uncertainty-of': ({ dimension, share }) => term(share, `how unsure the ${inWords(dimension)} is`),
  'made-piece': ({ piece, share }) => term(share, `the ${inWords(piece)} as made`),
  'made-half-front': ({ piece, share }) => term(share, `the whole front that the ${inWords(piece)} as made is half of`),
  'fabric-beside-ordinary': ({ compared }) => THICKNESS[compared],
  limit: () => 'kept within its limits',
  'finished-neck-edge': () => 'length of the neck’s finished edge',
  'piece-neck-edge': () => 'length of the neck’s edge on the piece',
  'opening-for-head': () => 'as far as the head needs',
  'deepened-for-arm': () => 'deepened for the arm and its sleeve',
  'solved-from-seam': () => 'solved from the seam',
  'sleeve-below-seam': () => 'the sleeve below its seam with the body',
  'solved-from-made-sleeve': () => 'solved from the sleeve as made',
  'length-less-armhole-of-made-sleeve': () => 'length less the armhole that the sleeve as made needs',
  'made-body-and-armhole-of-made-sleeve': () => 'the body as made, and the armhole that the sleeve as made needs',
  'from-v-point': () => 'from the V’s point under its band',
  'left-by-widened-neck': () => 'what the neck leaves, made larger for the head',
  'kept-to-shoulders': () => 'kept to what the shoulders carry',
  'widened-for-head': () => 'widened until the head passes',
  'widened-beside-opening': () => 'widened, beside an opening',
};
