/** Hands a text or a picture to the person as a file, without leaving the page. */
export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the blob over when the click returns in every engine tried; a minute is for slow dialogs.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
