import { createRequire } from 'node:module';
import type { Face, Family } from './type-styles.js';

const resolve = createRequire(import.meta.url).resolve;

const PACKAGES: Record<Family, { readonly folder: string; readonly stem: string }> = {
  serif: { folder: '@expo-google-fonts/source-serif-4', stem: 'SourceSerif4' },
  sans: { folder: '@expo-google-fonts/source-sans-3', stem: 'SourceSans3' },
};

const CUTS: Record<Face, string> = {
  regular: '400Regular',
  italic: '400Regular_Italic',
  bold: '600SemiBold',
  'bold-italic': '600SemiBold_Italic',
};

// Asked for each word, and looking a package up reads folders.
const found = new Map<string, string>();

/**
 * Path of the TrueType file of a face (SIL Open Font License 1.1). The digits of both families
 * share one width as they come, so that columns of numbers line up without a font feature.
 */
export function fontFile(family: Family, face: Face): string {
  const { folder, stem } = PACKAGES[family];
  const cut = CUTS[face];
  const name = `${folder}/${cut}/${stem}_${cut}.ttf`;
  const path = found.get(name) ?? resolve(name);
  found.set(name, path);
  return path;
}
