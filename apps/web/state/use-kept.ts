import { useCallback, useState } from 'react';

/**
 * What a person typed, kept in the browser until it is saved: a failed save or a reload loses
 * nothing. `null` for nothing typed.
 */
export function useKept<Value>(
  key: string,
): readonly [Value | null, (value: Value | null) => void] {
  const [value, setValue] = useState(() => read<Value>(key));
  const set = useCallback(
    (next: Value | null) => {
      setValue(next);
      write(key, next);
    },
    [key],
  );
  return [value, set];
}

const place = (key: string): string => `campus-plan ${key}`;

function read<Value>(key: string): Value | null {
  try {
    const text = localStorage.getItem(place(key));
    return text === null ? null : (JSON.parse(text) as Value);
  } catch {
    return null;
  }
}

/** A browser that keeps nothing (a private window) still lets one type and save. */
function write(key: string, value: unknown): void {
  try {
    if (value === null) localStorage.removeItem(place(key));
    else localStorage.setItem(place(key), JSON.stringify(value));
  } catch {
    // Nothing can be kept here; the value stays on the page.
  }
}
