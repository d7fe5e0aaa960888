import { zlibSync } from 'fflate';
import PDFDocument from 'pdfkit';
import type { ReportDocument } from '../document/blocks.ts';
import type { ReportFonts } from '../fonts.ts';
import { escapeText } from '../svg/escape.ts';
import { FONTS } from './type-styles.ts';

/** An empty PDF for a report: tagged, titled, dated, its fonts known by name. */
export function openPdf(report: ReportDocument, fonts: ReportFonts): PDFKit.PDFDocument {
  const options: PDFKit.PDFDocumentOptions = {
    // No font to begin with: the library would look for one that is not there in a browser, and a font given here and
    // registered again below would be opened anew at every use.
    font: null as unknown as string,
    autoFirstPage: false,
    bufferPages: true,
    compress: false,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en-US',
    displayTitle: true,
    info: {
      Title: report.title,
      Creator: 'Undercroft',
      Producer: 'Undercroft',
      CreationDate: new Date(`${report.datedOn}T00:00:00Z`),
    },
  };
  const doc = new PDFDocument(options);
  // Bytes are what the library takes; its types ask for something narrower.
  doc.registerFont(FONTS.text, fonts.text as unknown as string);
  doc.registerFont(FONTS.strong, fonts.textBold as unknown as string);
  doc.registerFont(FONTS.figures, fonts.figures as unknown as string);
  safeMetadata(doc);
  packAlike(doc);
  return doc;
}

/**
 * The library writes the title into the XML packet of the file as it stands; a title with `<` or `&` would break that. The
 * packet is written after the plain title has gone into the file's own information, so there it can be escaped.
 */
function safeMetadata(doc: PDFKit.PDFDocument): void {
  const write = doc.endMetadata.bind(doc);
  doc.endMetadata = () => {
    doc.info = { ...doc.info, Title: escapeText(doc.info.Title ?? '') };
    write();
  };
}

/** What of the library's objects is used below. Version 0.20.2, pinned. */
interface StreamObject {
  data: { Type?: string; Filter?: string };
  buffer: Uint8Array[];
  finalize(): void;
}

/**
 * Packs streams with one compressor everywhere. The library takes that of the platform, and platforms pack the same content
 * into different bytes. The XML packet stays readable.
 */
function packAlike(doc: PDFKit.PDFDocument): void {
  const make = doc.ref.bind(doc);
  doc.ref = (data) => {
    const made = make(data);
    const object = made as unknown as StreamObject;
    const finish = object.finalize.bind(object);
    object.finalize = () => {
      const { data, buffer } = object;
      if (buffer.length > 0 && data.Filter === undefined && data.Type !== 'Metadata') {
        object.buffer = [zlibSync(joined(buffer))];
        data.Filter = 'FlateDecode';
      }
      finish();
    };
    return made;
  };
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** All bytes of a PDF once it is ended. */
export function collectBytes(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => resolve(joined(chunks)));
  });
}
