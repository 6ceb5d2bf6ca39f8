import { useSyncExternalStore } from 'react';

/**
 * The page has room for the machine and a sheet beside it: 75 of its own letters' heights, as the style sheets' container "page"
 * measures. Letters of twice the size need twice the width, so that a page with large text falls back to a narrower layout.
 */
export function usePageWide(): boolean {
  return useSyncExternalStore(followWidth, isWide);
}

/** The page is as narrow as a phone, measured in its letters. */
export function isPageNarrow(): boolean {
  return widthInLetters() < 37.5;
}

let wide: boolean | undefined;

function isWide(): boolean {
  wide ??= widthInLetters() >= 75;
  return wide;
}

function followWidth(changed: () => void): () => void {
  const observer = new ResizeObserver(() => {
    wide = undefined;
    changed();
  });
  observer.observe(document.body);
  return () => observer.disconnect();
}

function widthInLetters(): number {
  return document.body.clientWidth / Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
}
