/** Hands a file to the browser to be saved. */
export function saveFile(name: string, content: Blob | string): void {
  const url = URL.createObjectURL(new Blob([content], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the address after the click; it is let go once that has surely happened.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
