/**
 * Which way imports may point. `faults` takes sources as path -> text and returns one line for each import that points
 * the wrong way, each ring of imports, and each reach of the pure packages for clock, chance or the outside.
 * It reads the text as the formatter leaves it: `import` and `export` begin a line, or the import is a call.
 */
import { posix } from 'node:path';

/** What each package may import: of ours, and, where it must run anywhere, of others. */
const packages: Record<string, { ours: string[]; others?: string[] }> = {
  model: { ours: [], others: [] },
  records: { ours: [], others: ['zod'] },
  workbench: { ours: ['model', 'records'], others: [] },
  cli: { ours: ['workbench', 'records'] },
  web: { ours: ['workbench', 'records'] },
  server: { ours: ['records'] },
};

/** The rooms of the model. Each may import itself and those before it. */
const rooms =
  'numerics springs dampers tyres masses rear fork statics uncertainty steady attitude limits plan estimation fitting ride testing'.split(
    ' ',
  );

/** The packages that people meet: they may show the examples. */
const edges = ['cli', 'web'];

/** The packages that must give the same answer for the same input, whatever the hour and the machine. */
const pure = ['model', 'workbench'];
const impure =
  /(?<![\w$.])(?:Date|performance|fetch|process|console|globalThis|crypto)\b|\bMath\s*\.\s*random\b/g;

const testTools = /^(?:vitest|fast-check|node:.+)$/;

export function faults(sources: ReadonlyMap<string, string>): string[] {
  const found = [...sources].flatMap(([file, text]) =>
    [
      ...wrongPlace(file),
      ...importsOf(text).flatMap((target) => wrongWay(file, target, sources)),
      ...impurities(file, text),
    ].map((why) => `${file}: ${why}`),
  );
  return [...found, ...rings(sources).map((ring) => `ring of imports: ${ring.join(' -> ')}`)];
}

/** The module names that a source imports or passes on, types included. */
export function importsOf(text: string): string[] {
  const statement =
    /^\s*(?:import|export)\s(?:[\w\s{},*$]*?\sfrom\s)?\s*['"]([^'"]+)['"]|\bimport\(\s*['"`]?([^'"`)]*)/gm;
  return [...withoutComments(text).matchAll(statement)].map((match) => match[1] ?? match[2] ?? '');
}

function wrongPlace(file: string): string[] {
  if (!packages[packageOf(file)]) return [`no rule says what the package ${packageOf(file)} may import`];
  const stray = packageOf(file) === 'model' && !rooms.includes(roomOf(file));
  return stray ? [`the model has no room called ${roomOf(file)}`] : [];
}

function wrongWay(file: string, target: string, sources: ReadonlyMap<string, string>): string[] {
  if (isRelative(target)) return wrongInside(file, resolve(file, target), sources);
  const { ours, others } = packages[packageOf(file)] ?? { ours: [] };
  const room = /^@sagwright\/([^/]+)/.exec(target)?.[1];
  const allowed = room
    ? ours.includes(room)
    : !others || others.includes(target.split('/')[0]!) || (isTest(file) && testTools.test(target));
  return allowed ? [] : [`${packageOf(file)} may not import ${target}`];
}

function wrongInside(file: string, target: string, sources: ReadonlyMap<string, string>): string[] {
  if (target.startsWith('examples/') && edges.includes(packageOf(file))) return [];
  if (packageOf(target) !== packageOf(file))
    return [`${target} is in another package: import it by the package's name`];
  if (/\.tsx?$/.test(target) && !sources.has(target)) return [`${target} was not seen`];
  if (isTest(file) && roomOf(target) === 'testing') return [];
  const later = packageOf(file) === 'model' && rooms.indexOf(roomOf(target)) > rooms.indexOf(roomOf(file));
  return later ? [`${roomOf(file)} may not import ${roomOf(target)}, which comes later`] : [];
}

function impurities(file: string, text: string): string[] {
  if (!pure.includes(packageOf(file)) || isTest(file)) return [];
  return [...withoutWords(text).matchAll(impure)].map(([word]) => `${word} in a pure package`);
}

/** Each closed way through the imports inside a package, once, its first file repeated at its end. */
function rings(sources: ReadonlyMap<string, string>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]): void => {
    const start = trail.indexOf(file);
    if (start >= 0) found.push([...trail.slice(start), file]);
    if (start >= 0 || done.has(file)) return;
    for (const target of importsOf(sources.get(file) ?? '').filter(isRelative))
      visit(resolve(file, target), [...trail, file]);
    done.add(file);
  };
  for (const file of sources.keys()) visit(file, []);
  return found;
}

const commentOrWords =
  /\/\*[\s\S]*?\*\/|\/\/.*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\[\s\S]|[^`\\])*`/g;

function withoutComments(text: string): string {
  return text.replace(commentOrWords, (part) => (part.startsWith('/') ? ' ' : part));
}

/** Only what is run: of a template, the parts in `${}`. */
function withoutWords(text: string): string {
  return text.replace(commentOrWords, (part) =>
    part.startsWith('`') ? (part.match(/\$\{[^}]*\}/g) ?? []).join(' ') : ' ',
  );
}

function isRelative(target: string): boolean {
  return target.startsWith('.');
}

function resolve(file: string, target: string): string {
  return posix.join(posix.dirname(file), target);
}

/** `packages/model/src/springs/spring.ts` -> `model`; what lies outside a package's sources has none. */
function packageOf(file: string): string {
  return /^packages\/([^/]+)\/src\//.exec(file)?.[1] ?? '';
}

function roomOf(file: string): string {
  return file.split('/')[3] ?? '';
}

/** A test, or what a package keeps in `src/testing` for tests of its own and of others. */
function isTest(file: string): boolean {
  return /\.test\.tsx?$|^packages\/[^/]+\/src\/testing\//.test(file);
}
