// Whether two paths lead to one file, links followed.
import { realpathSync } from 'node:fs';

export function isSameFile(a: string, b: string): boolean {
  try {
    return realpathSync(a) === realpathSync(b);
  } catch {
    return false;
  }
}
