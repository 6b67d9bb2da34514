import { type PDFDocument, PDFHexString, PDFName } from 'pdf-lib';

export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  /** BCP 47 language of the text. */
  readonly language: string;
  /** Date the document carries, `2027-10-02`; handed in, so that the same content gives the same bytes. */
  readonly dated: string;
}

const escapeXml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** XMP packet (ISO 16684-1) with the PDF/UA identifier (ISO 14289-1, clause 5). */
const xmp = ({ title, author, subject, language, dated }: DocumentFacts): string => {
  const moment = `${dated}T00:00:00Z`;
  return [
    '<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">',
    `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(title)}</rdf:li></rdf:Alt></dc:title>`,
    `<dc:creator><rdf:Seq><rdf:li>${escapeXml(author)}</rdf:li></rdf:Seq></dc:creator>`,
    `<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(subject)}</rdf:li></rdf:Alt></dc:description>`,
    `<dc:language><rdf:Bag><rdf:li>${escapeXml(language)}</rdf:li></rdf:Bag></dc:language>`,
    `<xmp:CreateDate>${moment}</xmp:CreateDate><xmp:ModifyDate>${moment}</xmp:ModifyDate>`,
    '<xmp:CreatorTool>Wayfold</xmp:CreatorTool><pdf:Producer>Wayfold</pdf:Producer>',
    '<pdfuaid:part>1</pdfuaid:part>',
    '</rdf:Description></rdf:RDF></x:xmpmeta>',
    '<?xpacket end="r"?>',
  ].join('\n');
};

/** Title, language, dates and the accessibility identifier, in the information dictionary and in XMP alike. */
export const writeMetadata = (pdf: PDFDocument, facts: DocumentFacts): void => {
  const moment = new Date(`${facts.dated}T00:00:00Z`);
  pdf.setTitle(facts.title, { showInWindowTitleBar: true });
  pdf.setAuthor(facts.author);
  pdf.setSubject(facts.subject);
  pdf.setCreator('Wayfold');
  pdf.setProducer('Wayfold');
  pdf.setCreationDate(moment);
  pdf.setModificationDate(moment);
  pdf.catalog.set(PDFName.of('Lang'), PDFHexString.fromText(facts.language));
  const packet = pdf.context.stream(new TextEncoder().encode(xmp(facts)), { Type: 'Metadata', Subtype: 'XML' });
  pdf.catalog.set(PDFName.of('Metadata'), pdf.context.register(packet));
};
