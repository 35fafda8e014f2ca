/** Control characters and those that Unicode keeps for no character: XML or its readers lose them. */
const LOST_IN_XML = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]|\p{Noncharacter_Code_Point}/gu;

/**
 * A text as ISO/IEC 29500 (18.4, ST_Xstring) has it: characters that XML or its readers lose as
 * `_xHHHH_`, each UTF-16 unit one, and a text that looks like such an escape escaped itself.
 */
export function toXstring(text: string): string {
  return text
    .replace(/\p{Cs}/gu, '')
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(LOST_IN_XML, escaped);
}

/** The same text to whoever reads it, written otherwise. */
export function withFirstEscaped(text: string): string {
  return `${escaped(text.slice(0, 1))}${text.slice(1)}`;
}

function escaped(character: string): string {
  return Array.from({ length: character.length }, (_, i) => {
    const unit = character.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0');
    return `_x${unit}_`;
  }).join('');
}
