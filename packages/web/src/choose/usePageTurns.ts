import { useEffect } from 'react';
import { pageKey } from '../app/pageKey.ts';
import type { ChooseEnd } from './end.ts';

/** Keys of the Choose tab: [ and ] turn its pages. */
export function usePageTurns(onEnd: (end: ChooseEnd) => void): void {
  useEffect(() => {
    const keyDown = (event: KeyboardEvent): void => {
      const key = pageKey(event);
      if (key === '[') onEnd('rear');
      if (key === ']') onEnd('front');
    };
    addEventListener('keydown', keyDown);
    return () => removeEventListener('keydown', keyDown);
  }, [onEnd]);
}
