/**
 * `npm start`: from a fresh clone to a worked plan of the demo job, and the workbench opened where somebody sits before it.
 * Arguments after `npm start --` go on to the plan command; with any, and without a terminal, it ends after the plan.
 * The plan is on stdout, all else on stderr.
 */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { buildPage, compiler, obstacle, root, runTool, secondsSince } from './ready.mjs';

const demo = 'examples/two-and-a-box.json';

process.chdir(root);
process.exitCode = start(process.argv.slice(2));

function start(extra) {
  const inTheWay = obstacle();
  if (inTheWay) return stop(inTheWay);

  const started = Date.now();
  const build = runTool(compiler, ['-b'], process.stderr);
  if (build.status !== 0) return stop('The build failed; the words of the compiler are above.');
  const page = pageOutOfDate() ? buildPage(process.stderr) : build;
  if (page.status !== 0) return stop('The build of the page failed; its words are above.');
  console.error(`Built in ${secondsSince(started)}`);

  const plan = runTool('packages/cli/dist/main.js', ['plan', demo, ...extra]);
  if (plan.status !== 0) return plan.status ?? 1;
  console.error('\nFor a job file of your own: npm run sagwright -- plan your-job.json');
  if (extra.length > 0 || !process.stdout.isTTY || process.env.CI) return 0;
  console.error('');
  return runTool('packages/cli/dist/main.js', ['open']).status ?? 0;
}

/** The page is built anew when any of its sources, or of the packages under it, is newer. */
function pageOutOfDate() {
  const built = join(root, 'packages/web/dist/index.html');
  if (!existsSync(built)) return true;
  const since = statSync(built).mtimeMs;
  const newer = (path) =>
    statSync(path).isDirectory()
      ? readdirSync(path).some((name) => newer(join(path, name)))
      : statSync(path).mtimeMs > since;
  const sources = [
    'web/src',
    'web/public',
    'web/index.html',
    'web/vite.config.ts',
    'workbench/src',
    'records/src',
    'model/src',
  ];
  return [...sources.map((path) => join(root, 'packages', path)), join(root, 'examples')].some(newer);
}

function stop(reason) {
  console.error(reason);
  return 1;
}
