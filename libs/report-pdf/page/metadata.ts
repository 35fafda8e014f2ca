import type { PlanDocument } from '#report/document/plan-document.js';

/** Named in the file's properties as what made it. */
export const PRODUCT = 'campus-plan';

/** The file's XMP properties, among them the PDF/UA-1 identifier (ISO 14289-1, clause 5). */
export function metadataXml(document: PlanDocument): string {
  const created = new Date(document.createdAt).toISOString().replace(/\.\d+Z$/, 'Z');
  return [
    part('xmp="http://ns.adobe.com/xap/1.0/"', [
      `<xmp:CreateDate>${created}</xmp:CreateDate>`,
      `<xmp:CreatorTool>${PRODUCT}</xmp:CreatorTool>`,
    ]),
    part('dc="http://purl.org/dc/elements/1.1/"', [
      `<dc:title>${localized(document.title)}</dc:title>`,
      `<dc:creator><rdf:Seq><rdf:li>${escaped(document.program)}</rdf:li></rdf:Seq></dc:creator>`,
      `<dc:description>${localized(document.subject)}</dc:description>`,
      `<dc:language><rdf:Bag><rdf:li>${escaped(document.language)}</rdf:li></rdf:Bag></dc:language>`,
    ]),
    part('pdf="http://ns.adobe.com/pdf/1.3/"', [`<pdf:Producer>${PRODUCT}</pdf:Producer>`]),
    part('pdfuaid="http://www.aiim.org/pdfua/ns/id/"', ['<pdfuaid:part>1</pdfuaid:part>']),
  ].join('\n');
}

function part(namespace: string, properties: readonly string[]): string {
  const open = `<rdf:Description rdf:about="" xmlns:${namespace}>`;
  return [open, ...properties, '</rdf:Description>'].join('\n');
}

function localized(text: string): string {
  return `<rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}
