import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { describe, expect, test } from 'vitest';
import { createJobStore, type JobStore } from './jobStore.ts';
import { takeOff } from './loads.ts';
import { formerScales, goByScales, goByThings, type Scales } from './weighed.ts';

const before = tourerWith();
const LOAD = 'both';
const scales: Scales = { front: { value: 178, unit: 'kg' }, rear: { value: 371.5, unit: 'kg' } };

function tableWith(document: unknown): { readonly store: JobStore; readonly job: () => JobDocument } {
  const store = createJobStore({ id: 'job', document, changes: [] });
  return { store, job: () => store.state().document as JobDocument };
}

function weigh({ store, job }: ReturnType<typeof tableWith>): void {
  store.act('scales', () => goByScales(job(), LOAD, scales));
}

function list({ store, job }: ReturnType<typeof tableWith>): void {
  store.act('things', () => goByThings(job(), store.state().changes, LOAD));
}

describe('A load weighed with all of it aboard', () => {
  test('is a job that can be read: the readings in place of the list, all else of it kept', () => {
    const table = tableWith(before);
    weigh(table);
    expect(parseJob(table.job()).ok).toBe(true);
    const { aboard: _listed, ...rest } = before.loadCases[LOAD] as { aboard: object };
    expect(table.job()).toEqual({
      ...before,
      loadCases: { ...before.loadCases, [LOAD]: { ...rest, scales } },
    });
  });

  test('is one act: one undo lists the things again', () => {
    const table = tableWith(before);
    weigh(table);
    expect(table.store.state().changes).toHaveLength(1);
    table.store.undo();
    expect(table.job()).toEqual(before);
  });

  test('and listed again has what was aboard last; its readings are kept for the next time', () => {
    const table = tableWith(before);
    weigh(table);
    list(table);
    expect(table.job()).toEqual(before);
    expect(formerScales(table.store.state().changes, LOAD)).toEqual(scales);
    const { aboard } = before.loadCases[LOAD] as { aboard: Record<string, object> };
    table.store.act('off', () => takeOff(table.job(), LOAD, Object.keys(aboard)[0]!));
    const fewer = table.job();
    weigh(table);
    list(table);
    expect(table.job()).toEqual(fewer);
  });

  test('that was never listed starts with nothing aboard', () => {
    const { aboard: _listed, ...rest } = before.loadCases[LOAD] as { aboard: object };
    const table = tableWith({ ...before, loadCases: { ...before.loadCases, [LOAD]: { ...rest, scales } } });
    list(table);
    expect(table.job().loadCases[LOAD]).toEqual({ ...rest, aboard: {} });
    expect(parseJob(table.job()).ok).toBe(true);
    table.store.undo();
    expect(table.job().loadCases[LOAD]).toEqual({ ...rest, scales });
  });

  test('keeps to itself: what was aboard another load is not listed here', () => {
    const table = tableWith(before);
    table.store.act('scales', () => goByScales(table.job(), 'work', scales));
    expect(formerScales(table.store.state().changes, LOAD)).toBeUndefined();
    weigh(table);
    list(table);
    expect(table.job().loadCases[LOAD]).toEqual(before.loadCases[LOAD]);
  });
});
