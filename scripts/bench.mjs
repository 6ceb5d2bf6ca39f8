/** `npm run bench`: builds the model and measures what was built. See docs/benchmark.md. */
import { compiler, obstacle, root, runTool } from './ready.mjs';

process.chdir(root);
process.exitCode = bench();

function bench() {
  const inTheWay = obstacle();
  if (inTheWay) {
    console.error(inTheWay);
    return 1;
  }
  const build = runTool(compiler, ['-b', 'bench']);
  if (build.status !== 0) return 1;
  return runTool('bench/dist/bench/main.js', []).status ?? 1;
}
