import { resolve } from 'node:path';
import ts from 'typescript';
import type { DocBlock } from './doc-blocks.js';

const options = projectOptions();

/** Parsed once for all blocks: the language's own declarations are most of the work. */
const parsed = new Map<string, ts.SourceFile | undefined>();

/** What the project's type checker says of a block, as if the block were a file of tests/docs. */
export function errorsOf(block: DocBlock): readonly string[] {
  const path = resolve('tests/docs/block.ts');
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists } = host;
  host.fileExists = (name) => name === path || fileExists.call(host, name);
  host.getSourceFile = (name, version) => {
    if (name === path) return ts.createSourceFile(name, moduleText(block), version);
    if (!parsed.has(name)) parsed.set(name, getSourceFile.call(host, name, version));
    return parsed.get(name);
  };
  const program = ts.createProgram([path], options, host);
  return ts
    .getPreEmitDiagnostics(program, program.getSourceFile(path))
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
}

/** The block as JavaScript, for Node to run from the project's folder. */
export function javascriptOf(block: DocBlock): string {
  const { module, target } = { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 };
  return ts.transpileModule(moduleText(block), { compilerOptions: { module, target } }).outputText;
}

/** Without an import a block would be a script, and its names global. */
function moduleText({ code }: DocBlock): string {
  return `${code}\nexport {};\n`;
}

/** The settings of tsconfig.json, less those that concern written files and unused names. */
function projectOptions(): ts.CompilerOptions {
  const { config } = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path)) as {
    config: object;
  };
  const project = ts.parseJsonConfigFileContent(
    { ...config, include: [], files: [] },
    ts.sys,
    resolve('.'),
  );
  const { tsBuildInfoFile: _written, ...others } = project.options;
  return { ...others, noEmit: true, incremental: false, noUnusedLocals: false };
}
