import { useEffect, useState } from 'react';
import { remember, remembered } from '../storage/remembered.ts';

/** Sun: dark on a light sheet, for glare. Truck: light on a dark one, for the inside of a truck. */
export type Theme = 'sun' | 'truck';

const KEY = 'sagwright-theme';

/** The theme, kept on this device; it never changes by itself while somebody works. */
export function useTheme(): readonly [Theme, (theme: Theme) => void] {
  const [theme, setTheme] = useState<Theme>(() => kept() ?? preferred());
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
    paintFrame();
    remember(KEY, theme);
  }, [theme]);
  return [theme, setTheme];
}

function kept(): Theme | null {
  const value = remembered(KEY);
  return value === 'sun' || value === 'truck' ? value : null;
}

function preferred(): Theme {
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'truck' : 'sun';
}

/** The frame that the system draws around an installed page has the colour of the job strip. */
function paintFrame(): void {
  const colour = getComputedStyle(document.documentElement).getPropertyValue('--paper');
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', colour);
}
