import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !file.endsWith('index.ts'))
    .map((file) => join(folder, file))
    .sort();
}

function isExported(node: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(node) &&
    (ts.getModifiers(node) ?? []).some((m) => m.kind === ts.SyntaxKind.ExportKeyword)
  );
}

function nameOf(node: ts.Statement): string | undefined {
  if (ts.isVariableStatement(node)) return node.declarationList.declarations[0]?.name.getText();
  const { name } = node as ts.Statement & { readonly name?: ts.Identifier };
  return name?.getText();
}

function parse(file: string): ts.SourceFile {
  return ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.Latest, true);
}

/** What the indexes of the subjects hand out: file and name. */
function handedOut(): { file: string; name: string }[] {
  const folder = 'packages/engine/src';
  const subjects = readdirSync(join(root, folder), { withFileTypes: true }).filter((d) => d.isDirectory());
  return subjects
    .map((d) => join(folder, d.name, 'index.ts'))
    .filter((index) => existsSync(join(root, index)))
    .flatMap((index) =>
      parse(index).statements.flatMap((node) => {
        if (!ts.isExportDeclaration(node) || node.moduleSpecifier === undefined) return [];
        if (node.exportClause === undefined || !ts.isNamedExports(node.exportClause)) return [];
        const file = join(dirname(index), (node.moduleSpecifier as ts.StringLiteral).text);
        return node.exportClause.elements.map((e) => ({ file, name: (e.propertyName ?? e.name).text }));
      }),
    );
}

/** Statement that declares an exported name. */
function declarationOf(file: string, name: string): ts.Statement | undefined {
  return parse(file).statements.find((node) => isExported(node) && nameOf(node) === name);
}

describe('what the engine exports', () => {
  const names = handedOut();

  it('is read at all', () => {
    expect(names.length).toBeGreaterThan(300);
  });

  it('says what it means in a comment', () => {
    const bare = names.filter(({ file, name }) => {
      const node = declarationOf(file, name);
      return node === undefined || ts.getJSDocCommentsAndTags(node).length === 0;
    });
    expect(bare).toEqual([]);
  });
});

describe('file sizes', () => {
  it('stay under 400 lines, data aside', () => {
    const data =
      /catalogue\/|quantities\/|overlays\/|station-data\/|criteria\/facts|criteria\/sources|demo\//;
    const packages = ['engine', 'record', 'assessment', 'report', 'cli'];
    const long = packages
      .flatMap((p) => sources(`packages/${p}/src`))
      .filter((file) => !data.test(file))
      .filter((file) => readFileSync(join(root, file), 'utf8').split('\n').length > 400);
    expect(long).toEqual([]);
  });
});
