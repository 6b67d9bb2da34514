import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { drawPiece, drawSundry } from '../draw/index.ts';
import type { Guide } from '../guide/index.ts';
import type { Finding } from '../model/index.ts';
import {
  bookletPdf,
  cardSheetPdf,
  dayPlanPdf,
  type PaperName,
  type Printed,
  type PrintSources,
  packingListPdf,
  wearTablePdf,
} from '../print/index.ts';
import type { Download } from '../site/pictures.ts';
import type { Fonts } from '../type/index.ts';
import type { Language } from '../words/index.ts';
import { type Cache, keyOf } from './cache.ts';

export interface PrintShop {
  readonly fonts: Fonts;
  readonly language: Language;
  readonly cache: Cache;
  readonly codeHash: string;
  readonly onSheet: (what: string) => void;
}

interface SheetJob {
  readonly kind: Download['kind'];
  readonly paper: Download['paper'];
  readonly file: string;
  print(): Promise<Printed>;
}

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];
const jobsOf = (guide: Guide, sources: PrintSources): readonly SheetJob[] => [
  ...PAPERS.flatMap((paper): SheetJob[] => {
    const end = `${paper.toLowerCase()}.pdf`;
    return [
      {
        kind: 'packing list',
        paper,
        file: `packing-list-${end}`,
        print: () => packingListPdf(guide, sources, { paper }),
      },
      { kind: 'day plan', paper, file: `day-plan-${end}`, print: () => dayPlanPdf(guide, sources, { paper }) },
      { kind: 'wear table', paper, file: `wear-table-${end}`, print: () => wearTablePdf(guide, sources, { paper }) },
    ];
  }),
  { kind: 'booklet', paper: 'A5', file: 'booklet-a5.pdf', print: () => bookletPdf(guide, sources) },
  {
    kind: 'booklet to fold',
    paper: guide.studio.paper,
    file: `booklet-to-fold-${guide.studio.paper.toLowerCase()}.pdf`,
    print: () => bookletPdf(guide, sources, { imposed: true }),
  },
  {
    kind: 'card sheet',
    paper: guide.studio.paper,
    file: `card-sheet-${guide.studio.paper.toLowerCase()}.pdf`,
    print: () => cardSheetPdf(guide, sources),
  },
];

/** Prints every sheet of a guide into its folder. */
export const printSheets = async (
  guide: Guide,
  folder: string,
  shop: PrintShop,
): Promise<{ readonly downloads: readonly Download[]; readonly findings: readonly Finding[] }> => {
  const sources: PrintSources = { fonts: shop.fonts, language: shop.language, drawPiece, drawSundry };
  const downloads: Download[] = [];
  const findings = new Map<string, Finding>();
  const { findings: _, ...content } = guide;
  await mkdir(path.join(folder, 'print'), { recursive: true });
  for (const job of jobsOf(guide, sources)) {
    shop.onSheet(job.file);
    const packed = await shop.cache.get(keyOf(shop.codeHash, 'sheet', job.file, content), async () =>
      pack(await job.print()),
    );
    const { bytes, found } = unpack(packed);
    for (const finding of found) findings.set(JSON.stringify([finding.rule, finding.message]), finding);
    const address = `print/${job.file}`;
    await writeFile(path.join(folder, address), bytes);
    downloads.push({ kind: job.kind, paper: job.paper, address, bytes: bytes.length });
  }
  return { downloads, findings: [...findings.values()] };
};

/** A kept sheet: four bytes of length, its findings as JSON, then the PDF. */
const pack = ({ bytes, findings }: Printed): Uint8Array => {
  const said = new TextEncoder().encode(JSON.stringify(findings));
  const packed = new Uint8Array(4 + said.length + bytes.length);
  new DataView(packed.buffer).setUint32(0, said.length);
  packed.set(said, 4);
  packed.set(bytes, 4 + said.length);
  return packed;
};

const unpack = (packed: Uint8Array): { readonly bytes: Uint8Array; readonly found: readonly Finding[] } => {
  const length = new DataView(packed.buffer, packed.byteOffset).getUint32(0);
  const said = new TextDecoder().decode(packed.subarray(4, 4 + length));
  return { bytes: packed.subarray(4 + length), found: JSON.parse(said) as readonly Finding[] };
};
