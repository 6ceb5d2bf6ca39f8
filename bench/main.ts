/** `npm run bench`: what the model takes on this machine, as one table. It stops only where a result is wrong. */
import { cpus } from 'node:os';
import { balanceLines } from './balanceLines.ts';
import { drawLines } from './drawLines.ts';
import { linkageLines } from './linkageLines.ts';
import { loadedMachines } from './machines.ts';
import { jobLines, planLines } from './planLines.ts';
import { tableOf } from './table.ts';

const lines = [
  ...balanceLines(loadedMachines()),
  ...linkageLines(),
  ...planLines(),
  ...jobLines(),
  ...drawLines(),
];
console.log(`${cpus()[0]?.model ?? 'unknown processor'}, one core, Node ${process.versions.node}\n`);
console.log(tableOf(lines));
