// What the file says of itself to archives and to reading aids: title, day, the parts of the standards it is written by, its colour space.
import type PDFDocument from 'pdfkit';
import { colourProfile, profileName } from './colour-profile.ts';
import { pdfText } from './structure.ts';

type Document = InstanceType<typeof PDFDocument>;

export interface About {
  readonly title: string;
  readonly language: string;
  /** Of the newest record; the minute of printing stands nowhere. */
  readonly date: Date;
}

/** Name of the program, as the file gives it in both of its places. */
export const maker = 'Splitpin';

let profile: Buffer | undefined;

/** Writes metadata and colour space. The library's own metadata are not used: they take a title for markup. */
export function writeAbout(doc: Document, about: About): void {
  const metadata = doc.ref({ Type: 'Metadata', Subtype: 'XML' });
  // Archives look for the packet as plain text.
  metadata.compress = false;
  metadata.end(Buffer.from(packet(about), 'utf8'));
  profile ??= colourProfile();
  const colours = doc.ref({ N: 3, Alternate: 'DeviceRGB' });
  colours.end(profile);
  const intent = {
    Type: 'OutputIntent',
    S: 'GTS_PDFA1',
    OutputConditionIdentifier: pdfText(profileName),
    Info: pdfText(profileName),
    DestOutputProfile: colours,
  };
  Object.assign(doc._root.data, { Metadata: metadata, OutputIntents: [intent] });
  doc.endMetadata = () => undefined;
}

/** The packet of ISO 16684-1; it says the same as the file's own dictionary, and by which parts of ISO 19005 and 14289 it is written. */
function packet({ title, language, date }: About): string {
  const day = date.toISOString().replace(/\.\d+/, '');
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(title)}</rdf:li></rdf:Alt></dc:title>
<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>${day}</xmp:CreateDate>
<xmp:ModifyDate>${day}</xmp:ModifyDate>
<xmp:CreatorTool>${maker}</xmp:CreatorTool>
<pdf:Producer>${maker}</pdf:Producer>
<pdfaid:part>3</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`;
}

/** A text as it stands in markup; what no markup may hold is left out. */
function escaped(text: string): string {
  const allowed = text.replaceAll(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '');
  return allowed.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
