import { describe, expect, test } from 'vitest';
import { write } from '../job/edits.ts';
import { createJobStore } from '../job/jobStore.ts';
import type { Kept } from '../storage/kept.ts';
import type { Keeping } from '../storage/shelf.ts';
import { createKeeper, type Keeper } from './keeper.ts';

/** A shelf as the browser has it, held in memory; `fail` makes it refuse. */
function shelfInMemory() {
  const held = new Map<string, Kept>();
  let fail: Keeping | null = null;
  return {
    held,
    fail: (outcome: Keeping | null): void => {
      fail = outcome;
    },
    askToPersist: () => Promise.resolve(true),
    keep: async (kept: Kept, seen: string | null): Promise<Keeping> => {
      await Promise.resolve();
      if (fail !== null) return fail;
      const there = held.get(kept.id);
      if (there !== undefined && there.kept !== seen) return 'changed elsewhere';
      held.set(kept.id, kept);
      return 'kept';
    },
  };
}

type Shelf = ReturnType<typeof shelfInMemory>;

let moment = 0;

/** A window of the page with the job on its table. */
function windowOn(shelf: Shelf, begin: Kept) {
  const store = createJobStore(begin);
  const said: unknown[] = [];
  let ids = 0;
  const pages: { postMessage: (id: unknown) => void; onmessage: BroadcastChannel['onmessage'] } = {
    postMessage: (id) => void said.push(id),
    onmessage: null,
  };
  const keeper = createKeeper(
    {
      store,
      shelf,
      pages,
      now: () => `moment ${++moment}`,
      newId: () => `copy-${++ids}`,
    },
    begin,
    'kept',
  );
  const name = (to: string): void => store.act('name', (document) => [write(document, ['name'], to)]);
  return { store, keeper, pages, said, name };
}

const begin: Kept = { id: 'job-1', document: { name: 'grey' }, changes: [], kept: 'moment 0' };

/** When the keeper rests. */
async function rest({ state, subscribe }: Keeper): Promise<void> {
  if (state() !== 'keeping') return;
  await new Promise<void>((done) => {
    const stop = subscribe(() => {
      if (state() === 'keeping') return;
      stop();
      done();
    });
  });
}

function shelfWith(kept: Kept): Shelf {
  const shelf = shelfInMemory();
  shelf.held.set(kept.id, kept);
  return shelf;
}

describe('one window', () => {
  test('keeps each change with its undo, and tells the other windows', async () => {
    const shelf = shelfWith(begin);
    const { keeper, name, said } = windowOn(shelf, begin);
    name('blue');
    expect(keeper.state()).toBe('keeping');
    await rest(keeper);
    expect(keeper.state()).toBe('kept');
    expect(shelf.held.get('job-1')).toMatchObject({
      document: { name: 'blue' },
      changes: [{ words: 'name' }],
    });
    expect(said).toEqual(['job-1']);
  });

  test('keeps the last change of a job although another is laid at once', async () => {
    const shelf = shelfWith(begin);
    const { keeper, name, store } = windowOn(shelf, begin);
    name('blue');
    name('green');
    store.lay({ id: 'job-2', document: { name: 'new' }, changes: [] });
    await rest(keeper);
    expect(shelf.held.get('job-1')).toMatchObject({ document: { name: 'green' } });
    expect(shelf.held.get('job-2')).toMatchObject({ document: { name: 'new' } });
  });

  test('does not touch a job that is only looked at', async () => {
    const other: Kept = { ...begin, id: 'job-2', kept: 'moment 0b' };
    const shelf = shelfWith(other);
    const { keeper, store } = windowOn(shelf, begin);
    keeper.layKept(other);
    await rest(keeper);
    expect(store.state().id).toBe('job-2');
    expect(shelf.held.get('job-2')).toBe(other);
  });

  test('says that a change is not kept, and keeps it once it can', async () => {
    const shelf = shelfWith(begin);
    const { keeper, name } = windowOn(shelf, begin);
    shelf.fail('no room');
    name('blue');
    await rest(keeper);
    expect(keeper.state()).toBe('no room');
    shelf.fail(null);
    keeper.keepNow();
    await rest(keeper);
    expect(keeper.state()).toBe('kept');
    expect(shelf.held.get('job-1')).toMatchObject({ document: { name: 'blue' } });
  });

  test('goes on saying so when another job is looked at', async () => {
    const shelf = shelfWith(begin);
    const { keeper, name } = windowOn(shelf, begin);
    shelf.fail('refused');
    name('blue');
    await rest(keeper);
    keeper.layKept({ ...begin, id: 'job-2' });
    expect(keeper.state()).toBe('refused');
  });
});

describe('two windows on the same job', () => {
  test('never write over each other: the second goes on as a copy', async () => {
    const shelf = shelfWith(begin);
    const [first, second] = [windowOn(shelf, begin), windowOn(shelf, begin)];
    first.name('by the first');
    await rest(first.keeper);
    second.name('by the second');
    await rest(second.keeper);
    expect(second.keeper.state()).toBe('went on as a copy');
    expect(shelf.held.get('job-1')).toMatchObject({ document: { name: 'by the first' } });
    expect(shelf.held.get('copy-1')).toMatchObject({ document: { name: 'by the second, a copy' } });
    expect(second.store.state().id).toBe('copy-1');
    second.name('and on');
    await rest(second.keeper);
    expect(second.keeper.state()).toBe('kept');
    expect(shelf.held.size).toBe(2);
  });

  test('lose nothing where the second leaves for another job at once', async () => {
    const shelf = shelfWith(begin);
    const [first, second] = [windowOn(shelf, begin), windowOn(shelf, begin)];
    first.name('by the first');
    await rest(first.keeper);
    second.name('by the');
    second.name('by the second');
    second.store.lay({ id: 'job-2', document: {}, changes: [] });
    await rest(second.keeper);
    expect([...shelf.held.values()].map(({ document }) => document)).toEqual([
      { name: 'by the first' },
      {},
      { name: 'by the second' },
    ]);
  });

  test('the second hears of it before it does anything, and may show what the first did', async () => {
    const shelf = shelfWith(begin);
    const [first, second] = [windowOn(shelf, begin), windowOn(shelf, begin)];
    first.name('by the first');
    await rest(first.keeper);
    second.pages.onmessage?.call({} as BroadcastChannel, { data: 'job-1' } as MessageEvent);
    expect(second.keeper.state()).toBe('changed elsewhere');
    second.keeper.layKept(shelf.held.get('job-1')!);
    second.name('and the second');
    await rest(second.keeper);
    expect(second.keeper.state()).toBe('kept');
    expect(shelf.held.size).toBe(1);
  });
});
