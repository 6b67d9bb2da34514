import { type PDFDocument, PDFHexString, PDFName, type PDFRef, PDFString } from 'pdf-lib';
import { type Area, POINTS_A_MILLIMETRE } from '../paper.ts';
import { nums, rgb } from './numbers.ts';
import { widgetRectangle } from './sheet.ts';
import type { Surface } from './surface.ts';
import type { TagTree } from './tags.ts';

export interface TickBoxes {
  /** A box to tick on paper and on screen. The name is the field's own, the label is read out. */
  add(surface: Surface, area: Area, box: { name: string; label: string; ink: string; tick: string }): void;
  write(): void;
}

/** On a page, printed with it (ISO 32000-1, table 165). */
const PRINT = 4;

/** The tick alone: the box itself is drawn on the page, so that it is there in every viewer. */
const tickOperators = (side: number, colour: string): string =>
  [
    `q ${rgb(colour)} RG ${nums(side * 0.1)} w 1 J 1 j`,
    `${nums(side * 0.2, side * 0.5)} m ${nums(side * 0.42, side * 0.24)} l ${nums(side * 0.84, side * 0.84)} l S Q`,
  ].join('\n');

export const createTickBoxes = (pdf: PDFDocument, tags: TagTree): TickBoxes => {
  const { context } = pdf;
  const fields: PDFRef[] = [];
  const names = new Map<string, number>();
  const unique = (name: string): string => {
    const plain = name.replaceAll('.', '-');
    const used = (names.get(plain) ?? 0) + 1;
    names.set(plain, used);
    return used === 1 ? plain : `${plain}-${used}`;
  };
  const appearances = new Map<string, PDFRef>();
  const appearance = (side: number, operators: string): PDFRef => {
    const key = `${side} ${operators}`;
    const made =
      appearances.get(key) ??
      context.register(
        context.flateStream(operators, { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, side, side], Resources: {} }),
      );
    appearances.set(key, made);
    return made;
  };
  return {
    add: (surface, area, { name, label, ink, tick }) => {
      surface.artifact(() => surface.rectangle(area, { stroke: { colour: ink, width: 0.7 }, fill: '#ffffff' }));
      const { origin, sheet } = surface;
      const side = area.width * POINTS_A_MILLIMETRE;
      const ref = context.nextRef();
      surface.tag('Form', {}, () => {
        const key = tags.addObject(sheet.page.ref, ref);
        const widget = context.obj({
          Type: 'Annot',
          Subtype: 'Widget',
          FT: 'Btn',
          F: PRINT,
          P: sheet.page.ref,
          Rect: [...widgetRectangle({ ...area, x: area.x + origin.x, y: area.y + origin.y }, sheet)],
          V: 'Off',
          AS: 'Off',
          AP: { N: { Yes: appearance(side, tickOperators(side, tick)), Off: appearance(side, '') } },
          StructParent: key,
        });
        widget.set(PDFName.of('T'), PDFString.of(unique(name)));
        widget.set(PDFName.of('TU'), PDFHexString.fromText(label));
        context.assign(ref, widget);
      });
      sheet.widgets.push(ref);
      fields.push(ref);
    },
    write: () => {
      if (fields.length === 0) return;
      pdf.catalog.set(PDFName.of('AcroForm'), context.register(context.obj({ Fields: fields })));
    },
  };
};
