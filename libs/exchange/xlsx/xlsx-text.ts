const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g;

/**
 * A text as ISO/IEC 29500 (18.4, ST_Xstring) has it: control characters, which XML cannot hold or which
 * get lost on the way, as `_xHHHH_`, and a text that looks like such an escape escaped itself.
 */
export function toXstring(text: string): string {
  return text
    .replace(/\p{Cs}|[\ufffe\uffff]/gu, '')
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(CONTROL, (c) => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`);
}
