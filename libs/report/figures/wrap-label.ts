import { roughTextWidth } from './text-width.js';

/**
 * Breaks a label into lines of about `room` points at most, at spaces; a word that is longer is
 * cut. The lines hold all letters of the label.
 */
export function wrapLabel(text: string, size: number, room: number): readonly string[] {
  const most = Math.max(1, Math.floor(room / roughTextWidth('x', size)));
  const lines: string[] = [];
  for (const word of text.split(' ').flatMap((one) => pieces(one, most))) {
    const last = lines.at(-1);
    if (last !== undefined && [...last, ...word].length + 1 <= most) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(word);
    }
  }
  return lines;
}

function pieces(word: string, most: number): readonly string[] {
  const letters = [...word];
  const count = Math.ceil(letters.length / most);
  return Array.from({ length: count }, (_, n) => letters.slice(n * most, (n + 1) * most).join(''));
}
