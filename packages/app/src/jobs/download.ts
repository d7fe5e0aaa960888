function plainName(title: string): string {
  return title
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
}

/** Hands a file to the person: the browser asks where to keep it, or keeps it with the downloads. */
export function downloadFile(file: Blob, title: string, ending: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = `${plainName(title) || 'job'}.${ending}`;
  link.click();
  // Some browsers read the file only after the click was handled.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Hands a job to the person as an archive file. */
export function download(bytes: Uint8Array<ArrayBuffer>, title: string): void {
  downloadFile(new Blob([bytes], { type: 'application/zip' }), title, 'undercroft');
}
