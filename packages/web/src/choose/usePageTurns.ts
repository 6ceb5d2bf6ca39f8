import { useEffect } from 'react';
import { pageKey } from '../app/pageKey.ts';
import { type ChoosePage, choosePages } from './end.ts';

/** Keys of the Choose tab: [ and ] turn its pages and stop at the first and the last, R and F go to an end. */
export function usePageTurns(page: ChoosePage, onPage: (page: ChoosePage) => void): void {
  useEffect(() => {
    const keyDown = (event: KeyboardEvent): void => {
      const key = pageKey(event) ?? '';
      const by = { '[': -1, ']': 1 }[key];
      if (key === 'r') onPage('rear');
      if (key === 'f') onPage('front');
      const next = by === undefined ? undefined : choosePages[choosePages.indexOf(page) + by];
      if (next !== undefined) onPage(next);
    };
    addEventListener('keydown', keyDown);
    return () => removeEventListener('keydown', keyDown);
  }, [page, onPage]);
}
