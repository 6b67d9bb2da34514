import { PDFArray, type PDFDocument, PDFHexString, PDFName, PDFNumber, type PDFRef } from 'pdf-lib';

/** Standard structure types (ISO 32000-1, 14.8.4) that our sheets use. */
export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'Span'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Caption'
  | 'Form';

/** Types that hold other elements and never text or pictures of their own. */
const GROUPING: ReadonlySet<Role> = new Set(['Document', 'Sect', 'L', 'LI', 'Table', 'THead', 'TBody', 'TR']);

export interface TagProperties {
  /** What a figure shows, in words. */
  readonly alt?: string;
  /** What is read instead of the marks on the page. */
  readonly actualText?: string;
  /** Of a header cell. */
  readonly scope?: 'Row' | 'Column';
  readonly columnSpan?: number;
}

type Kid =
  | { readonly is: 'element'; readonly element: Tag }
  | { readonly is: 'content'; readonly page: PDFRef; readonly id: number }
  | { readonly is: 'object'; readonly page: PDFRef; readonly ref: PDFRef };

/** One structure element while the document is being made. */
export interface Tag {
  readonly role: Role;
  readonly properties: TagProperties;
  readonly parent: Tag | undefined;
  readonly kids: Kid[];
  readonly ref: PDFRef;
}

/** The structure tree: what is read, in the order in which it is painted. */
export interface TagTree {
  readonly root: Tag;
  /** The element that is open now. */
  current(): Tag;
  /** Paints inside a new element. */
  within<T>(role: Role, properties: TagProperties, paint: () => T): T;
  /** Goes on inside an element that was opened before, on a later page for instance. */
  resume<T>(tag: Tag, paint: () => T): T;
  open(role: Role, properties?: TagProperties): Tag;
  /** Files marked content under the open element. Throws when that element may hold none. */
  addContent(tag: Tag, page: PDFRef, id: number): void;
  /** Files a form field under the open element; gives its key in the parent tree. */
  addObject(page: PDFRef, ref: PDFRef): number;
  /** Key of a page in the parent tree. */
  addPage(owners: readonly Tag[]): number;
  write(): void;
}

export const createTagTree = (pdf: PDFDocument): TagTree => {
  const { context } = pdf;
  const make = (role: Role, properties: TagProperties, parent: Tag | undefined): Tag => ({
    role,
    properties,
    parent,
    kids: [],
    ref: context.nextRef(),
  });
  const root = make('Document', {}, undefined);
  const stack: Tag[] = [root];
  const parents: (readonly Tag[] | Tag)[] = [];
  const current = (): Tag => stack.at(-1) ?? root;

  const resume = <T>(tag: Tag, paint: () => T): T => {
    stack.push(tag);
    try {
      return paint();
    } finally {
      stack.pop();
    }
  };
  const open = (role: Role, properties: TagProperties = {}): Tag => {
    const parent = current();
    const tag = make(role, properties, parent);
    parent.kids.push({ is: 'element', element: tag });
    return tag;
  };

  /** Content on the element's own page is written as its number alone (ISO 32000-1, 14.7.4.2). */
  const writeKid = (kid: Kid, page: PDFRef | undefined) => {
    if (kid.is === 'element') return kid.element.ref;
    if (kid.is === 'content' && kid.page === page) return PDFNumber.of(kid.id);
    if (kid.is === 'content') return context.obj({ Type: 'MCR', Pg: kid.page, MCID: kid.id });
    return context.obj({ Type: 'OBJR', Pg: kid.page, Obj: kid.ref });
  };
  const attributes = ({ scope, columnSpan }: TagProperties) => ({
    O: 'Table',
    ...(scope === undefined ? {} : { Scope: scope }),
    ...(columnSpan === undefined ? {} : { ColSpan: columnSpan }),
  });
  const writeTag = (tag: Tag, parent: PDFRef): void => {
    const { alt, actualText, scope, columnSpan } = tag.properties;
    const kids = PDFArray.withContext(context);
    const page = tag.kids.find((kid) => kid.is === 'content')?.page;
    for (const kid of tag.kids) kids.push(writeKid(kid, page));
    const dictionary = context.obj({
      S: tag.role,
      P: parent,
      K: kids,
      ...(page === undefined ? {} : { Pg: page }),
    });
    if (alt !== undefined) dictionary.set(PDFName.of('Alt'), PDFHexString.fromText(alt));
    if (actualText !== undefined) dictionary.set(PDFName.of('ActualText'), PDFHexString.fromText(actualText));
    if (scope !== undefined || columnSpan !== undefined) {
      dictionary.set(PDFName.of('A'), context.obj(attributes(tag.properties)));
    }
    context.assign(tag.ref, dictionary);
    for (const kid of tag.kids) if (kid.is === 'element') writeTag(kid.element, tag.ref);
  };

  return {
    root,
    current,
    resume,
    open,
    within: (role, properties, paint) => resume(open(role, properties), paint),
    addContent: (tag, page, id) => {
      if (GROUPING.has(tag.role)) throw new Error(`a ${tag.role} element cannot hold text or pictures itself`);
      tag.kids.push({ is: 'content', page, id });
    },
    addObject: (page, ref) => {
      const tag = current();
      tag.kids.push({ is: 'object', page, ref });
      return parents.push(tag) - 1;
    },
    addPage: (owners) => parents.push(owners) - 1,
    write: () => {
      const tree = context.nextRef();
      writeTag(root, tree);
      const numbers = PDFArray.withContext(context);
      parents.forEach((owner, key) => {
        numbers.push(PDFNumber.of(key));
        numbers.push('ref' in owner ? owner.ref : context.register(context.obj(owner.map((tag) => tag.ref))));
      });
      const parentTree = context.register(context.obj({ Nums: numbers }));
      context.assign(
        tree,
        context.obj({
          Type: 'StructTreeRoot',
          K: [root.ref],
          ParentTree: parentTree,
          ParentTreeNextKey: parents.length,
        }),
      );
      pdf.catalog.set(PDFName.of('StructTreeRoot'), tree);
      pdf.catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }));
    },
  };
};
