#!/usr/bin/env node
import { run } from './run.ts';

// A reader that has seen enough (head, a pager that was closed) is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2));
