/**
 * `npm start`: from a fresh clone to a worked plan of the demo job.
 * Arguments after `npm start --` go on to the plan command. The plan is on stdout, all else on stderr.
 */
import { compiler, obstacle, root, runTool, secondsSince } from './ready.mjs';

const demo = 'examples/two-and-a-box.json';

process.chdir(root);
process.exitCode = start(process.argv.slice(2));

function start(extra) {
  const inTheWay = obstacle();
  if (inTheWay) return stop(inTheWay);

  const started = Date.now();
  const build = runTool(compiler, ['-b'], process.stderr);
  if (build.status !== 0) return stop('The build failed; the words of the compiler are above.');
  console.error(`Built in ${secondsSince(started)}`);

  const plan = runTool('packages/cli/dist/main.js', ['plan', demo, ...extra]);
  if (plan.status !== 0) return plan.status ?? 1;
  console.error('\nFor a job file of your own: npm run sagwright -- plan your-job.json');
  return 0;
}

function stop(reason) {
  console.error(reason);
  return 1;
}
