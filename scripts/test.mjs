/**
 * `npm test`: type check, lint, and every test, each in turn even when one before it failed.
 * The last line is `N passed, N failed`: one for each test, and one for each other step.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browserObstacle } from './browser.mjs';
import { buildPage, compiler, obstacle, runTool, secondsSince } from './ready.mjs';

const total = { passed: 0, failed: 0 };
run();
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;

function run() {
  const inTheWay = obstacle();
  if (inTheWay) {
    console.error(inTheWay);
    total.failed += 1;
    return;
  }
  step('Type check of the sources', () => one(runTool(compiler, ['-b'])));
  step('Type check of the tests', () => one(runTool(compiler, ['-p', 'tsconfig.tests.json'])));
  step('Lint and format', () => one(runTool('node_modules/@biomejs/biome/bin/biome', ['check', '.'])));
  step('Type check of the page', () => one(runTool(compiler, ['-p', 'packages/web'])));
  step('Type check of the browser tests', () => one(runTool(compiler, ['-p', 'packages/web/e2e'])));
  step('Build of the page', () => one(buildPage()));
  step('Tests', () => tests('vitest.config.ts'));
  step('Tests of the page in a browser', browserTests);
}

function browserTests() {
  const inTheWay = browserObstacle();
  if (inTheWay === null) return tests('vitest.pages.config.ts');
  console.error(inTheWay);
  return { passed: 0, failed: 1 };
}

function step(name, work) {
  const started = Date.now();
  const { passed, failed } = work();
  total.passed += passed;
  total.failed += failed;
  console.log(`${name}: ${failed === 0 ? 'passed' : 'FAILED'} in ${secondsSince(started)}`);
}

function one({ status }) {
  return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function tests(config) {
  const folder = mkdtempSync(join(tmpdir(), 'sagwright-tests-'));
  try {
    const report = join(folder, 'report.json');
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
    const { status } = runTool('node_modules/vitest/vitest.mjs', ['run', '--config', config, ...reporters]);
    return count(report, status);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * Every test that did not pass has failed: a skipped one proves nothing. So has a file that broke outside its tests
 * (it could not be loaded), and a run that ended badly although each test passed (an error that no test caught).
 */
function count(reportFile, status) {
  const { numPassedTests, numTotalTests, testResults } = read(reportFile);
  const broken = testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed'),
  );
  const failed = numTotalTests - numPassedTests + broken.length;
  return { passed: numPassedTests, failed: failed === 0 && status !== 0 ? 1 : failed };
}

function read(reportFile) {
  try {
    return JSON.parse(readFileSync(reportFile, 'utf8'));
  } catch (error) {
    console.error(`The test runner left no report: ${error.message}`);
    return { numPassedTests: 0, numTotalTests: 0, testResults: [] };
  }
}
