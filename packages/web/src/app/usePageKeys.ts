import { useEffect } from 'react';
import { isTyping, pageKey } from './pageKey.ts';

interface PageKeys {
  readonly tabs: number;
  readonly onTab: (index: number) => void;
  readonly onUndo: () => void;
  readonly onList: () => void;
}

/** Keys of the whole page: a digit for each tab, Ctrl+Z to undo, ? for the list of keys. A sheet that is typed into has its own. */
export function usePageKeys({ tabs, onTab, onUndo, onList }: PageKeys): void {
  useEffect(() => {
    const keyDown = (event: KeyboardEvent): void => {
      if ((event.ctrlKey || event.metaKey) && event.key === 'z' && !isTyping(event.target)) {
        event.preventDefault();
        onUndo();
        return;
      }
      const key = pageKey(event);
      const tab = Number(key) - 1;
      if (key !== null && Number.isInteger(tab) && tab >= 0 && tab < tabs) onTab(tab);
      if (key === '?') onList();
    };
    addEventListener('keydown', keyDown);
    return () => removeEventListener('keydown', keyDown);
  });
}
