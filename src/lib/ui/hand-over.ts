/** Hands a file to the reader under a name, without any server. */
export function handOver(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // Some browsers read the file only after the click has been dealt with; kept for ever, it would stay in memory.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}
