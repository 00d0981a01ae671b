import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demandedByCompiler, type Addition } from './demanded-by-compiler.ts';

/** A recipe of the contributors' guide, tried: what is added, by a name that stands nowhere else, and the files that must ask for their part. */
interface Recipe {
  readonly title: string;
  readonly name: string;
  readonly addition: Addition;
  readonly asks: readonly string[];
}

/** They compare the page's records with the types that `npm run client` makes, and are content once it has run. */
const RECORDS = 'apps/web/src/api/record-repositories.ts';
const SHEETS = 'apps/web/src/api/sheet-repository.ts';
const MESSAGES = 'apps/web/src/messages.en.ts';

/** The language stands first: an error about it may print the whole catalogue, and with it the other names. */
const RECIPES: readonly Recipe[] = [
  {
    title: 'Add a sentence, or a language.',
    name: 'thrownAwayLanguage',
    addition: { file: 'libs/advice-text/src/language.ts', after: "Language = 'en'", text: " | 'thrownAwayLanguage'" },
    asks: ['libs/advice-text/src/text.ts', 'libs/advice-text/src/meaning.ts', 'apps/web/src/messages.ts'],
  },
  {
    title: 'Add a body dimension.',
    name: 'thrown-away-girth',
    addition: { file: 'libs/body/src/body-dimension.ts', after: "'shoulder-girth',", text: " 'thrown-away-girth'," },
    asks: [
      'libs/body/src/human-limits.ts',
      'libs/body/src/default-u-values.ts',
      'libs/body/src/model/measuring-difficulty.ts',
      'libs/advice-text/src/en/how-to-measure.ts',
      'apps/web/src/drawing/tapes.ts',
      MESSAGES,
      RECORDS,
    ],
  },
  {
    title: 'Add a construction.',
    name: 'thrown-away-construction',
    addition: { file: 'libs/garment/src/garment.ts', after: "'raglan'", text: ", 'thrown-away-construction'" },
    asks: [
      'libs/fit/src/constructions/index.ts',
      'libs/fit/src/evidence/of-construction.ts',
      'libs/advice-text/src/en/terms.ts',
      'libs/advice-text/src/en/printed.ts',
      'apps/web/src/drawing/drawn-construction.ts',
      MESSAGES,
      RECORDS,
      SHEETS,
    ],
  },
  {
    title: 'Add a check.',
    name: 'thrown-away-check',
    addition: { file: 'libs/fit/src/design/check-name.ts', after: "'nape-to-cuff',", text: " 'thrown-away-check'," },
    asks: [
      'libs/fit/src/checks/index.ts',
      'libs/advice-text/src/en/checks.ts',
      'libs/advice-text/src/en/check-meanings.ts',
      MESSAGES,
    ],
  },
  {
    title: 'Add a dimension to the sheet.',
    name: 'thrown-away-depth',
    addition: {
      file: 'libs/fit/src/messages/dimension-name.ts',
      after: 'export const ASSEMBLED_NAMES = [',
      text: " 'thrown-away-depth',",
    },
    asks: ['libs/fit/src/tracing/dimension-table.ts', 'libs/advice-text/src/en/dimension-meanings.ts', MESSAGES],
  },
  {
    title: 'Add a planner format.',
    name: 'thrownAwayFormat',
    addition: { file: 'libs/hand-off/src/planner-takes.ts', after: "'csv'", text: ", 'thrownAwayFormat'" },
    asks: ['libs/hand-off/src/formats/index.ts', MESSAGES, 'apps/web/src/send/planner-notes.ts'],
  },
];

const recipeOf = (message: string): Recipe | undefined => RECIPES.find(({ name }) => message.includes(name));
const demands = demandedByCompiler(RECIPES.map(({ addition }) => addition));
const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');

describe('The recipes of the contributors’ guide', () => {
  it.each(RECIPES)('$title The compiler asks for each part, and for nothing else', (recipe) => {
    const files = demands.filter(({ message }) => recipeOf(message) === recipe).map(({ file }) => file);
    expect([...new Set(files)].sort()).toEqual([...recipe.asks].sort());
  });

  it.each(RECIPES)('$title The recipe names the file of each part', ({ title, addition, asks }) => {
    const recipe = guide.split('\n\n').find((paragraph) => paragraph.startsWith(`**${title}**`)) ?? '';
    expect([addition.file, ...asks].filter((file) => !recipe.includes(file))).toEqual([]);
  });

  it('leave no error that none of them accounts for', () => {
    const others = demands.filter(({ message }) => recipeOf(message) === undefined);
    expect(others).toEqual([]);
  });
});
