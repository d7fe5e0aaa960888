/** Hands a file to the person: the browser asks where to keep it, or keeps it with the downloads. */
export function download(bytes: Uint8Array<ArrayBuffer>, title: string): void {
  const name = title
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  const url = URL.createObjectURL(new Blob([bytes], { type: 'application/zip' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = `${name || 'job'}.undercroft`;
  link.click();
  // Some browsers read the file only after the click was handled.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
