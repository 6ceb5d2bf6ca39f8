import open from 'open';

/** Whether a browser could be seen: not in a build, and on Linux only under a desktop. */
export function canShowBrowser(): boolean {
  const { CI, DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (CI !== undefined) return false;
  return process.platform !== 'linux' || DISPLAY !== undefined || WAYLAND_DISPLAY !== undefined;
}

/** Shows a page in this person's browser; `onNone` is called where none could be started. */
export async function showInBrowser(address: string, onNone: () => void): Promise<void> {
  const started = await open(address);
  started.on('error', onNone);
}
