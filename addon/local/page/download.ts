/** Hands a file to the browser to be saved; nothing leaves the machine. */
export function download(name: string, content: BlobPart, type: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // The browser must have begun to read before the content goes.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
