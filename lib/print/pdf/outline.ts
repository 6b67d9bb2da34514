import { type PDFDocument, PDFHexString, PDFName, type PDFRef } from 'pdf-lib';

/** A line of the reader's table of contents. */
export interface Bookmark {
  readonly title: string;
  /** 1 for the document's own parts, 2 for parts of these. */
  readonly level: number;
  readonly page: PDFRef;
  /** Points from the bottom of the page. */
  readonly top: number;
}

interface Node {
  readonly bookmark: Bookmark;
  readonly ref: PDFRef;
  readonly children: Node[];
}

/** Writes the outline (ISO 32000-1, 12.3.3), all of it open. */
export const writeOutline = (pdf: PDFDocument, bookmarks: readonly Bookmark[]): void => {
  if (bookmarks.length === 0) return;
  const { context } = pdf;
  const roots: Node[] = [];
  const path: Node[] = [];
  for (const bookmark of bookmarks) {
    while (path.length > 0 && (path.at(-1)?.bookmark.level ?? 0) >= bookmark.level) path.pop();
    const node: Node = { bookmark, ref: context.nextRef(), children: [] };
    (path.at(-1)?.children ?? roots).push(node);
    path.push(node);
  }
  const countOf = (nodes: readonly Node[]): number =>
    nodes.reduce((total, node) => total + 1 + countOf(node.children), 0);
  const write = (nodes: readonly Node[], parent: PDFRef): void => {
    nodes.forEach((node, index) => {
      const { title, page, top } = node.bookmark;
      const previous = nodes[index - 1];
      const next = nodes[index + 1];
      const first = node.children[0];
      const last = node.children.at(-1);
      context.assign(
        node.ref,
        context.obj({
          Title: PDFHexString.fromText(title),
          Parent: parent,
          Dest: [page, 'XYZ', 0, top, 0],
          ...(previous === undefined ? {} : { Prev: previous.ref }),
          ...(next === undefined ? {} : { Next: next.ref }),
          ...(first === undefined || last === undefined
            ? {}
            : { First: first.ref, Last: last.ref, Count: countOf(node.children) }),
        }),
      );
      write(node.children, node.ref);
    });
  };
  const root = context.nextRef();
  write(roots, root);
  const first = roots[0];
  const last = roots.at(-1);
  if (first === undefined || last === undefined) return;
  context.assign(root, context.obj({ Type: 'Outlines', First: first.ref, Last: last.ref, Count: countOf(roots) }));
  pdf.catalog.set(PDFName.of('Outlines'), root);
  pdf.catalog.set(PDFName.of('PageMode'), PDFName.of('UseOutlines'));
};
