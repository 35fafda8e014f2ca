import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What a command said about a file, or that the machine does not have it. */
export type ToolReport =
  | { readonly kind: 'ran'; readonly status: number | null; readonly output: string }
  | { readonly kind: 'absent' };

/** Runs a command on the bytes, written to a file that is removed afterwards. */
export function runOn(bytes: Uint8Array, command: string, flags: readonly string[]): ToolReport {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-check-'));
  try {
    const path = join(folder, 'document.pdf');
    writeFileSync(path, bytes);
    const { error, status, stdout, stderr } = spawnSync(command, [...flags, path], {
      encoding: 'utf8',
    });
    if (error) return { kind: 'absent' };
    return { kind: 'ran', status, output: stdout + stderr };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
