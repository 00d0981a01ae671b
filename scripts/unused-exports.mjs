// Prints each export that no other file imports, and fails where there is one. What a lib's index.ts exports is its public face.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, sep } from 'node:path';
import ts from 'typescript';

const FOLDERS = ['apps', 'bench', 'libs', 'scripts', 'seeds', 'tests'];
const files = FOLDERS.flatMap((folder) => readdirSync(folder, { recursive: true }).map((file) => join(folder, file)))
  .map((file) => file.split(sep).join('/'))
  .filter((file) => /\.(ts|tsx|mts|mjs)$/.test(file) && !/\.generated\.ts$|\.d\.m?ts$/.test(file));
/** Files whose exports are for others than our own: public faces, and what a tool asks for by its name. */
const isFace = (file) => /^libs\/[^/]+\/src\/index\.ts$|\.config\.ts$|^tests\/support\/postgres\.ts$/.test(file);

/** The exports of each file, and the names that others import from it; `*` is all of them. */
const exported = new Map();
const imported = new Map();

function importName(from, specifier, name) {
  const file = specifier.startsWith('#')
    ? `libs/${specifier.slice(1)}/src/index.ts`
    : normalize(join(dirname(from), specifier))
        .split(sep)
        .join('/');
  imported.set(file, (imported.get(file) ?? new Set()).add(name));
}

function readImports(file, node) {
  if (ts.isImportDeclaration(node)) {
    const { importClause } = node;
    const bindings = importClause?.namedBindings;
    if (importClause?.name) importName(file, node.moduleSpecifier.text, 'default');
    if (bindings && ts.isNamespaceImport(bindings)) importName(file, node.moduleSpecifier.text, '*');
    if (bindings && ts.isNamedImports(bindings))
      for (const { propertyName, name } of bindings.elements)
        importName(file, node.moduleSpecifier.text, (propertyName ?? name).text);
  } else if (ts.isExportDeclaration(node) && node.moduleSpecifier) {
    const names = node.exportClause && ts.isNamedExports(node.exportClause) ? node.exportClause.elements : null;
    if (names === null) importName(file, node.moduleSpecifier.text, '*');
    else
      for (const { propertyName, name } of names)
        importName(file, node.moduleSpecifier.text, (propertyName ?? name).text);
  } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [specifier] = node.arguments;
    if (specifier && ts.isStringLiteralLike(specifier)) importName(file, specifier.text, '*');
  } else if (ts.isImportTypeNode(node)) {
    importName(file, node.argument.literal.text, node.qualifier?.getText().split('.')[0] ?? '*');
  }
}

function exportsOf(node) {
  if (ts.isExportDeclaration(node) && node.exportClause && ts.isNamedExports(node.exportClause))
    return node.exportClause.elements.map(({ name }) => name.text);
  const modifiers = ts.canHaveModifiers(node) ? (ts.getModifiers(node) ?? []) : [];
  const has = (kind) => modifiers.some((modifier) => modifier.kind === kind);
  if (!has(ts.SyntaxKind.ExportKeyword)) return [];
  if (has(ts.SyntaxKind.DefaultKeyword)) return ['default'];
  if (ts.isVariableStatement(node)) return node.declarationList.declarations.map(({ name }) => name.getText());
  return node.name ? [node.name.text] : [];
}

for (const file of files) {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const names = [];
  const visit = (node) => {
    readImports(file, node);
    names.push(...exportsOf(node));
    ts.forEachChild(node, visit);
  };
  visit(source);
  exported.set(file, names);
}

const unused = [...exported].flatMap(([file, names]) => {
  const used = imported.get(file) ?? new Set();
  if (isFace(file) || used.has('*')) return [];
  return names.filter((name) => !used.has(name)).map((name) => `${file}: ${name}`);
});
for (const each of unused) console.log(`${each} is exported and nobody imports it.`);
if (unused.length > 0) process.exitCode = 1;
