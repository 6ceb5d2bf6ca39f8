import { useEffect } from 'react';

/** Takes a file that is dropped anywhere on the page. */
export function useDrop(onFile: (name: string, text: string) => void): void {
  useEffect(() => {
    const over = (event: DragEvent): void => event.preventDefault();
    const drop = (event: DragEvent): void => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) void file.text().then((text) => onFile(file.name, text));
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  });
}
