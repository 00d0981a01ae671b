import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';

/** Saves a text as a file named after the title of the sheet. */
export function saveFile(sheet: TargetSheet, ending: 'json' | 'csv' | 'svg', type: string, text: string): void {
  saveText(fileName(sheet.title), ending, type, text);
}

/** Saves a text as a file. */
export function saveText(name: string, ending: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${name}.${ending}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}

const fileName = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60) || say.keep.file;

/** True where the browser allows it; over plain http it does not. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
