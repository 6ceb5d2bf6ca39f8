/** Hands a text to the browser to be saved as a file. */
export function saveFile(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the address after the click; it is let go once that has surely happened.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
