import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import { useEffect } from 'react';
import { pageKey } from '../app/pageKey.ts';
import type { LadderShown } from './Ladders.tsx';

interface MachineKeys {
  readonly view: PageView;
  readonly load: LoadView;
  readonly onChoose: (load: string | null) => void;
  readonly onLadder: (ladder: LadderShown) => void;
}

/** L: the next load, after the last the machine alone; R and F: the ladder of that end where one stands alone. */
export function useMachineKeys({ view, load, onChoose, onLadder }: MachineKeys): void {
  useEffect(() => {
    const keyDown = (event: KeyboardEvent): void => {
      const key = pageKey(event);
      if (key === 'l') onChoose(view.loads[(view.loads.indexOf(load) + 1) % view.loads.length]!.id);
      if (key === 'r') onLadder('rear');
      if (key === 'f') onLadder('front');
    };
    addEventListener('keydown', keyDown);
    return () => removeEventListener('keydown', keyDown);
  });
}
