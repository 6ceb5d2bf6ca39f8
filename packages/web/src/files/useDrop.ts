import { useEffect } from 'react';
import './dropping.css';

/**
 * Takes a file that is dropped anywhere on the page. While one is held over it, the root says so (`data-dropping`), for the style.
 * Anything else that is dragged is left to the browser.
 */
export function useDrop(onFile: (file: File) => void): void {
  useEffect(() => {
    const { dataset } = document.documentElement;
    const over = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      dataset.dropping = '';
    };
    const away = (event: DragEvent): void => {
      if (event.relatedTarget === null) delete dataset.dropping;
    };
    const drop = (event: DragEvent): void => {
      delete dataset.dropping;
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      onFile(file);
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', away);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', away);
      removeEventListener('drop', drop);
    };
  });
}
