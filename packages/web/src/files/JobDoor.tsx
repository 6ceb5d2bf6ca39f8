import type { Template } from '@sagwright/records/schema/template';
import { lazy, Suspense, useEffect } from 'react';
import type { Keeper } from '../app/keeper.ts';
import { newId } from '../app/newId.ts';
import { useTable } from '../app/useJob.ts';
import type { Shelf } from '../storage/shelf.ts';
import type { BrokenFileOpened, OpenedFile } from './openFile.ts';
import { useDrop } from './useDrop.ts';

const BrokenFile = lazy(() => import('./BrokenFile.tsx'));
const FirstPlan = lazy(() => import('../machine/FirstPlan.tsx'));
const TemplatesSheet = lazy(() => import('./templates/TemplatesSheet.tsx'));
const JobsSheet = lazy(() => import('./JobsSheet.tsx'));

/** What stands open above the machine. */
export type Door =
  | { readonly kind: 'shut' | 'jobs' | 'three minutes' }
  | { readonly kind: 'templates'; readonly incoming: Template | null }
  | { readonly kind: 'broken file'; readonly file: BrokenFileOpened };

export const SHUT: Door = { kind: 'shut' };

/** Where a file leads that the page was opened for; a job lies on the table. */
export function doorTo(brought: OpenedFile | null): Door {
  if (brought?.kind === 'template') return { kind: 'templates', incoming: brought.template };
  return brought?.kind === 'broken' ? { kind: 'broken file', file: brought } : SHUT;
}

interface JobDoorProps {
  readonly door: Door;
  readonly onDoor: (door: Door) => void;
  readonly shelf: Shelf;
  readonly keeper: Keeper;
  /** Another job lies on the table. */
  readonly onLaid: () => void;
}

/** Every way by which a job comes to the table: from the shelf, from a file or an example, or begun anew. */
export function JobDoor({ door, onDoor, shelf, keeper, onLaid }: JobDoorProps) {
  const { store } = useTable();
  const shut = (): void => onDoor(SHUT);
  // What opens stands at the top of the page, wherever one was.
  useEffect(() => {
    if (door.kind !== 'shut') scrollTo({ top: 0 });
  }, [door]);
  const lay = (document: unknown): void => {
    store.lay({ id: newId('job'), document, changes: [] });
    shut();
    onLaid();
  };
  const open = async (file: File): Promise<void> => {
    const { openFile } = await import('./openFile.ts');
    const opened = await openFile(file);
    if (opened.kind === 'job') lay(opened.job);
    else onDoor(doorTo(opened));
  };
  useDrop((file) => void open(file));
  return (
    <Suspense>
      {door.kind === 'broken file' && <BrokenFile file={door.file} onMend={lay} onClose={shut} />}
      {door.kind === 'three minutes' && <FirstPlan onMade={lay} onClose={shut} />}
      {door.kind === 'templates' && <TemplatesSheet incoming={door.incoming} onBegin={lay} onClose={shut} />}
      {door.kind === 'jobs' && (
        <JobsSheet
          shelf={shelf}
          onFile={(file) => void open(file)}
          onKept={(kept) => {
            keeper.layKept(kept);
            shut();
            onLaid();
          }}
          onEmpty={() => void import('./emptyJob.ts').then(({ emptyJob }) => lay(emptyJob()))}
          onTemplates={() => onDoor({ kind: 'templates', incoming: null })}
          onThreeMinutes={() => onDoor({ kind: 'three minutes' })}
          onClose={shut}
        />
      )}
    </Suspense>
  );
}
