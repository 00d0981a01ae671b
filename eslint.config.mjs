import tseslint from 'typescript-eslint';
import reactHooks from 'eslint-plugin-react-hooks';
import prettier from 'eslint-config-prettier';

const clockAndChance = 'A lib is a pure function of its input: pass the time or the random number in.';
const sentences = 'A sentence belongs into libs/advice-text: return a code and its parameters.';
const clock = { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: clockAndChance };
/** Three words of lower-case letters in a row. */
const threeWords = '/[a-z]{2,} [a-z]{2,} [a-z]{2,}/';
const sentence = [
  { selector: `Literal[value=${threeWords}]`, message: sentences },
  { selector: `TemplateElement[value.raw=${threeWords}]`, message: sentences },
];

/** What differs by construction stands in a table over all of them: a new one then does not compile without its line. */
const byTable = 'Look the construction up in a Record<Construction, …>; in libs/fit, that is constructions/.';
const constructions = ['left', 'right']
  .flatMap((side) => [`[${side}.name='construction']`, `[${side}.property.name='construction']`])
  .map((compared) => ({
    selector: `BinaryExpression[operator=/^[!=]==?$/]${compared}:matches([left.type='Literal'],[right.type='Literal'])`,
    message: byTable,
  }));

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'data/', 'coverage/', '**/*.generated.ts'] },
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      eqeqeq: ['error', 'smart'],
      'no-console': 'error',
    },
  },
  {
    // Types are read here alone, where the product chooses; the rest is linted by its syntax.
    files: ['libs/**/*.ts', 'apps/api/src/**/*.ts', 'apps/web/src/**/*.{ts,tsx}'],
    ignores: ['**/*.spec.ts'],
    languageOptions: {
      parserOptions: { project: ['tsconfig.json', 'apps/web/tsconfig.json'], tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: false }],
    },
  },
  {
    files: ['libs/**/*.ts'],
    ignores: ['**/*.spec.ts'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: clockAndChance },
        { object: 'Date', property: 'now', message: clockAndChance },
      ],
      'no-restricted-syntax': ['error', clock, ...constructions],
    },
  },
  {
    files: ['apps/**/src/**/*.{ts,tsx}'],
    rules: { 'no-restricted-syntax': ['error', ...constructions] },
  },
  {
    files: ['libs/**/*.ts'],
    ignores: [
      '**/*.spec.ts',
      // Where sentences belong.
      'libs/advice-text/**',
      // Descriptions of fields document the API and the schema; they are no texts of a sheet.
      '**/*-record.ts',
      '**/taken-fields.ts',
      'libs/target-sheet/src/schema/*-schema.ts',
      // The publications and practices that numbers are from, quoted as they are.
      'libs/body/src/default-u-values.ts',
      // The edges of a piece have these names in every sheet of version 1.
      'libs/fit/src/outline/sleeve-outline.ts',
      // A sheet for tests.
      'libs/hand-off/src/example-sheet.ts',
      // Faults of the program, which no maker reads.
      'libs/measure/src/assert-never.ts',
      'libs/target-sheet/src/schema/validate.ts',
    ],
    rules: {
      'no-restricted-syntax': ['error', clock, ...constructions, ...sentence],
    },
  },
  {
    files: ['libs/fit/src/constructions/**/*.ts'],
    ignores: ['**/*.spec.ts'],
    rules: { 'no-restricted-syntax': ['error', clock, ...sentence] },
  },
  {
    files: [
      'scripts/**',
      'bench/**',
      'apps/api/src/main.ts',
      'apps/api/src/backup/main.ts',
      'apps/api/src/openapi.ts',
      'tests/support/**',
    ],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['apps/web/**/*.tsx', 'apps/web/**/*.ts'],
    plugins: { 'react-hooks': reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  prettier,
);
