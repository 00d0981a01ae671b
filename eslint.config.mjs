import tseslint from 'typescript-eslint';
import reactHooks from 'eslint-plugin-react-hooks';
import prettier from 'eslint-config-prettier';

const clockAndChance = 'A lib is a pure function of its input: pass the time or the random number in.';

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
    files: ['libs/**/*.ts'],
    ignores: ['**/*.spec.ts'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: clockAndChance },
        { object: 'Date', property: 'now', message: clockAndChance },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: clockAndChance },
      ],
    },
  },
  {
    files: ['scripts/**', 'bench/**', 'apps/api/src/main.ts', 'apps/api/src/openapi.ts', 'tests/support/**'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['apps/web/**/*.tsx', 'apps/web/**/*.ts'],
    plugins: { 'react-hooks': reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  prettier,
);
