import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { faults, importsOf } from './imports.ts';

describe('The sources', () => {
  const sources = sourcesOf('packages');

  it('point no import the wrong way and keep clock, chance and the outside out of the pure packages', () => {
    expect(faults(sources)).toEqual([]);
  });

  // Floors, not counts: they only tell that the sources were found and read. A new package gets one too.
  it.each([
    ['model', 20],
    ['records', 10],
  ])('of %s were seen, at least %i: a check of nothing would pass too', (name, least) => {
    const seen = [...sources].filter(([file]) => file.startsWith(`packages/${name}/src/`));
    expect(seen.length).toBeGreaterThanOrEqual(least);
    expect(seen.flatMap(([, text]) => importsOf(text)).length).toBeGreaterThanOrEqual(least);
  });
});

describe('The check of imports', () => {
  it('lets the right way pass, tests and their tools included', () => {
    expect(
      faultsOf({
        'model/src/springs/spring.ts': "import { root } from '../numerics/root.ts';",
        'model/src/springs/spring.test.ts':
          "import { it } from 'vitest';\nimport { springAt } from './spring.ts';\nimport { coil } from '../testing/coil.ts';",
        'model/src/testing/coil.ts':
          "import fc from 'fast-check';\nimport { springAt } from '../springs/spring.ts';",
        'model/src/numerics/root.ts': 'export const root = 1;',
        'records/src/job.ts': "import * as z from 'zod/mini';",
        'workbench/src/path.ts':
          "import { springAt } from '@sagwright/model/springs/spring';\nimport type { Job } from '@sagwright/records/job';",
        'cli/src/main.ts': "import { readFileSync } from 'node:fs';\nimport '@sagwright/workbench/path';",
      }),
    ).toEqual([]);
  });

  it.each([
    [
      'model/src/statics/a.ts',
      "import { Job } from '@sagwright/records/job';",
      'model may not import @sagwright/records/job',
    ],
    [
      'records/src/a.ts',
      "import '@sagwright/model/springs/spring';",
      'records may not import @sagwright/model/springs/spring',
    ],
    [
      'workbench/src/a.ts',
      'const late = await import(`@sagwright/cli/main`);',
      'workbench may not import @sagwright/cli/main',
    ],
    [
      'cli/src/a.ts',
      "export * from '@sagwright/model/plan/plan';",
      'cli may not import @sagwright/model/plan/plan',
    ],
    [
      'server/src/a.ts',
      "import '@sagwright/workbench/path';",
      'server may not import @sagwright/workbench/path',
    ],
    [
      'model/src/statics/a.test.ts',
      "import '@sagwright/workbench/path';",
      'model may not import @sagwright/workbench/path',
    ],
    ['model/src/statics/a.ts', "import { it } from 'vitest';", 'model may not import vitest'],
    ['workbench/src/a.ts', "import { readFileSync } from 'node:fs';", 'workbench may not import node:fs'],
    ['model/src/a.ts', '', 'the model has no room called a.ts'],
    ['cellar/src/a.ts', '', 'no rule says what the package cellar may import'],
    ['model/src/statics/a.ts', "import './b.ts';", 'packages/model/src/statics/b.ts was not seen'],
  ])('refuses %s: %s', (file, text, why) => {
    expect(faultsOf({ [file]: text })).toEqual([`packages/${file}: ${why}`]);
  });

  it('refuses a room of the model that imports a later one, be it only a type over several lines', () => {
    const plan = { 'model/src/plan/plan.ts': 'export interface Plan {}', 'model/src/dampers/damper.ts': '' };
    expect(
      faultsOf({ ...plan, 'model/src/statics/a.ts': "import type {\n  Plan,\n} from '../plan/plan.ts';" }),
    ).toEqual(['packages/model/src/statics/a.ts: statics may not import plan, which comes later']);
    expect(faultsOf({ ...plan, 'model/src/springs/a.ts': "import '../dampers/damper.ts';" })).toEqual([
      'packages/model/src/springs/a.ts: springs may not import dampers, which comes later',
    ]);
  });

  it('refuses a source that imports what is kept for tests', () => {
    const files = {
      'model/src/testing/coil.ts': '',
      'model/src/statics/a.ts': "import '../testing/coil.ts';",
    };
    expect(faultsOf(files)).toEqual([
      'packages/model/src/statics/a.ts: statics may not import testing, which comes later',
    ]);
  });

  it('refuses a relative way into another package', () => {
    const files = { 'records/src/job.ts': '', 'workbench/src/a.ts': "import '../../records/src/job.ts';" };
    expect(faultsOf(files)).toEqual([
      "packages/workbench/src/a.ts: packages/records/src/job.ts is in another package: import it by the package's name",
    ]);
  });

  it('finds a ring of imports', () => {
    const ring = {
      'cli/src/a.ts': "import './b.ts';",
      'cli/src/b.ts': "import './c.ts';",
      'cli/src/c.ts': "import './a.ts';",
    };
    expect(faultsOf(ring)).toEqual([
      'ring of imports: packages/cli/src/a.ts -> packages/cli/src/b.ts -> packages/cli/src/c.ts -> packages/cli/src/a.ts',
    ]);
  });

  it('finds clock, chance and the outside where they are used, not where they are spoken of', () => {
    const text = `
      // Math.random and Date are not for us; nor is process.env.
      const words = 'the process of a console'; const other = \`performance\`;
      const now = Date.now(), more = \`\${Math.random()}\`, { env } = process;`;
    expect(faultsOf({ 'workbench/src/a.ts': text })).toEqual(
      ['Date', 'Math.random', 'process'].map(
        (word) => `packages/workbench/src/a.ts: ${word} in a pure package`,
      ),
    );
    expect(faultsOf({ 'cli/src/a.ts': text, 'model/src/statics/a.test.ts': text })).toEqual([]);
  });

  it('does not take a comment for an import', () => {
    expect(
      importsOf("/* import './a.ts'; */ // export * from './b.ts'\nexport const url = 'http://x';\n"),
    ).toEqual([]);
  });
});

function faultsOf(files: Record<string, string>): string[] {
  return faults(new Map(Object.entries(files).map(([path, text]) => [`packages/${path}`, text])));
}

/** Every TypeScript source under packages/, by its path from the root of the repository. */
function sourcesOf(folder: string): Map<string, string> {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const paths = readdirSync(posix.join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((path) => posix.join(folder, path.replaceAll('\\', '/')))
    .filter((path) => /^packages\/[^/]+\/src\/.*\.tsx?$/.test(path));
  return new Map(paths.map((path) => [path, readFileSync(posix.join(root, path), 'utf8')]));
}
