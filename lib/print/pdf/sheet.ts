import { type PDFDocument, PDFName, type PDFPage, type PDFRef } from 'pdf-lib';
import { type Area, POINTS_A_MILLIMETRE, type Size } from '../paper.ts';
import { matrixNums } from './numbers.ts';
import { createResources, type Resources, writeResources } from './resources.ts';
import type { Tag, TagTree } from './tags.ts';

/** Who a stretch of a content stream belongs to: an element of the structure, or nothing that is read. */
type Owner = Tag | 'artifact';

/** A physical page. Everything on it is marked content: of an element, or an artifact (ISO 14289-1, 7.1). */
export interface Sheet {
  readonly page: PDFPage;
  readonly size: Size;
  readonly resources: Resources;
  readonly widgets: PDFRef[];
  /** Operators in points from the bottom, for text. */
  emit(owner: Owner, operators: string): void;
  /** Operators in millimetres from a point of the sheet, y downwards; they leave the graphics state as they like. */
  emitAt(owner: Owner, x: number, y: number, operators: string): void;
  finish(): void;
}

export interface SheetBoxes {
  /** Where the sheet is cut, when it is larger than the page. */
  readonly trim?: Area;
  readonly bleed?: Area;
}

const SCALE = POINTS_A_MILLIMETRE;

const points = (area: Area, size: Size): readonly number[] =>
  [area.x, size.height - area.y - area.height, area.x + area.width, size.height - area.y].map(
    (millimetres) => Math.round(millimetres * POINTS_A_MILLIMETRE * 1000) / 1000,
  );

export const createSheet = (pdf: PDFDocument, tags: TagTree, size: Size, boxes: SheetBoxes = {}): Sheet => {
  const page = pdf.addPage([size.width * POINTS_A_MILLIMETRE, size.height * POINTS_A_MILLIMETRE]);
  if (boxes.trim !== undefined) page.node.set(PDFName.of('TrimBox'), pdf.context.obj([...points(boxes.trim, size)]));
  if (boxes.bleed !== undefined) page.node.set(PDFName.of('BleedBox'), pdf.context.obj([...points(boxes.bleed, size)]));
  const resources = createResources();
  const stream: string[] = [];
  const owners: Tag[] = [];
  const widgets: PDFRef[] = [];
  let open: Owner | undefined;
  let space: string | undefined;
  const leaveSpace = (): void => {
    if (space !== undefined) stream.push('Q');
    space = undefined;
  };
  const close = (): void => {
    leaveSpace();
    if (open !== undefined) stream.push('EMC');
    open = undefined;
  };
  const enter = (owner: Owner): void => {
    if (owner === open) return;
    close();
    if (owner === 'artifact') stream.push('/Artifact BMC');
    else {
      const id = owners.push(owner) - 1;
      tags.addContent(owner, page.ref, id);
      stream.push(`/${owner.role} <</MCID ${id}>> BDC`);
    }
    open = owner;
  };
  return {
    page,
    size,
    resources,
    widgets,
    emit: (owner, operators) => {
      enter(owner);
      leaveSpace();
      stream.push(operators);
    },
    emitAt: (owner, x, y, operators) => {
      enter(owner);
      const matrix = matrixNums(SCALE, 0, 0, -SCALE, x * SCALE, (size.height - y) * SCALE);
      if (space !== matrix) {
        leaveSpace();
        stream.push(`q ${matrix} cm`);
        space = matrix;
      }
      stream.push(operators);
    },
    finish: () => {
      close();
      const { node } = page;
      const key = tags.addPage(owners);
      node.set(PDFName.of('StructParents'), pdf.context.obj(key));
      node.set(PDFName.of('Tabs'), PDFName.of('S'));
      node.set(PDFName.of('Resources'), writeResources(pdf, resources));
      node.set(PDFName.of('Contents'), pdf.context.register(pdf.context.flateStream(stream.join('\n'))));
      if (widgets.length > 0) node.set(PDFName.of('Annots'), pdf.context.obj(widgets));
    },
  };
};

/** Rectangle of a widget in points, from millimetres. */
export const widgetRectangle = (area: Area, sheet: Sheet): readonly number[] => points(area, sheet.size);
