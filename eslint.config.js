// Lint rules. The arrows of the house (DEVELOPERS.md) are the zones below; a warning fails the test.
import importX from 'eslint-plugin-import-x';
import { createTypeScriptImportResolver } from 'eslint-import-resolver-typescript';
import tseslint from 'typescript-eslint';

const zone = (target, from, message, except = []) => ({ target, from, message, except });
const hostObjects = ['SpreadsheetApp', 'HtmlService', 'Utilities', 'ScriptApp', 'PropertiesService', 'UrlFetchApp'];
/** The subjects, on every floor, in the order of their arrows: each knows those before it. A new one takes its place in this list. */
const subjects = ['basics', 'air', 'navigation', 'manual', 'runway', 'loading', 'fuel', 'descent', 'hold', 'ledger', 'route', 'currency'];
const arrowsOfSubjects = ['core', 'functions'].flatMap((floor) =>
  subjects.slice(0, -1).map((subject, place) =>
    zone(
      `./${floor}/${subject}`,
      subjects.slice(place + 1).map((later) => `./${floor}/${later}`),
      `${subject} knows only the subjects before it: ${subjects.slice(0, place).join(', ')}.`,
    ),
  ),
);
const clocks = [
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'No function reads the clock: dates come in as arguments.' },
  { selector: "MemberExpression[object.name='Date'][property.name='now']", message: 'No function reads the clock: dates come in as arguments.' },
];

export default tseslint.config(
  { ignores: ['node_modules', 'dist', 'build', 'docs'] },
  ...tseslint.configs.strict,
  {
    plugins: { 'import-x': importX },
    settings: { 'import-x/resolver-next': [createTypeScriptImportResolver({ project: 'tsconfig.base.json' })] },
    rules: {
      'import-x/no-restricted-paths': [
        'error',
        {
          zones: [
            zone('./core', '.', 'core imports core only.', ['./core', './node_modules']),
            zone('./functions', '.', 'functions import core and functions only.', ['./core', './functions', './node_modules']),
            zone('./sheets-templates', '.', 'sheets-templates import the registry names, facts and types only.', [
              './sheets-templates',
              './functions/facts.ts',
              './functions/registry/names.generated.ts',
            ]),
            zone('./addon/google', './addon/local', 'One host does not know the other.'),
            zone('./addon/local', './addon/google', 'One host does not know the other.'),
            zone('./addon/panel', ['./addon/google', './addon/local'], 'The panel knows a Host interface, no host.'),
            ...arrowsOfSubjects,
            zone(
              './functions/registry/!(index.generated).ts',
              subjects.map((subject) => `./functions/${subject}`),
              'The machinery knows no subject.',
            ),
            zone('./addon/tracing', '.', 'addon/tracing is arithmetic of its own: it imports nothing else.', ['./addon/tracing']),
            ...['workbook', 'pictures', 'calendar', 'form'].map((shared) =>
              zone(
                `./addon/${shared}`,
                ['./addon/google', './addon/local', './addon/panel'],
                'What the hosts and the panel share knows none of them.',
              ),
            ),
          ],
        },
      ],
      'import-x/no-cycle': 'error',
      'no-restricted-globals': ['error', ...hostObjects.map((name) => ({ name, message: `${name} belongs in addon/google only.` }))],
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'] }],
      'max-lines': ['error', { max: 260, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-unnecessary-condition': 'off',
    },
  },
  { files: ['core/**', 'functions/**', 'sheets-templates/**'], rules: { 'no-restricted-syntax': ['error', ...clocks] } },
  {
    files: [
      'core/**',
      'functions/**',
      'sheets-templates/**',
      'addon/google/**',
      'addon/panel/**',
      'addon/workbook/**',
      'addon/pictures/**',
      'addon/calendar/**',
      'addon/form/**',
      'addon/tracing/**',
    ],
    rules: {
      'no-restricted-imports': ['error', { patterns: [{ group: ['@univerjs/*'], message: 'The grid engine belongs in addon/local only.' }] }],
    },
  },
  { files: ['addon/google/**', 'test/google/**'], rules: { 'no-restricted-globals': 'off' } },
  { files: ['test/**'], rules: { 'max-lines-per-function': 'off', 'max-lines': ['error', { max: 600, skipBlankLines: true, skipComments: true }] } },
);
