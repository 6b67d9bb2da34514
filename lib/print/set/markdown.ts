import MarkdownIt from 'markdown-it';
import type { Block } from './block.ts';
import { drawn, row, stack, tagged } from './block.ts';
import type { FlowItem } from './flow.ts';
import type { Setter, Span, Type } from './setter.ts';
import { spans, text } from './text.ts';

/** The types that prose is set in. */
export interface ProseTypes {
  readonly roman: Type;
  readonly italic: Type;
  readonly strong: Type;
  readonly heading: Type;
}

const parser = new MarkdownIt({ html: false, linkify: false });
type Token = ReturnType<typeof parser.parse>[number];

const PARAGRAPH_GAP = 0.6;
const BULLET = 4.5;

/** Text of a line with emphasis; addresses are written out behind their words, since paper has no links. */
const inline = (tokens: readonly Token[], types: ProseTypes): readonly Span[] => {
  const made: Span[] = [];
  let italic = 0;
  let strong = 0;
  const links: string[] = [];
  const add = (words: string): void => {
    made.push({ text: words, type: strong > 0 ? types.strong : italic > 0 ? types.italic : types.roman });
  };
  for (const token of tokens) {
    if (token.type === 'text' || token.type === 'code_inline') add(token.content);
    else if (token.type === 'softbreak' || token.type === 'hardbreak') add(' ');
    else if (token.type === 'em_open') italic++;
    else if (token.type === 'em_close') italic--;
    else if (token.type === 'strong_open') strong++;
    else if (token.type === 'strong_close') strong--;
    else if (token.type === 'image') add(token.content);
    else if (token.type === 'link_open') links.push(String(token.attrGet('href') ?? ''));
    else if (token.type === 'link_close') add(` (${links.pop() ?? ''})`);
  }
  return made.filter((span) => span.text !== '');
};

const ended = (tokens: readonly Token[], from: number): number => {
  let depth = 0;
  for (let at = from; at < tokens.length; at++) {
    depth += tokens[at]?.nesting ?? 0;
    if (depth === 0) return at;
  }
  return tokens.length - 1;
};

/** Markdown as blocks of a flow: paragraphs, lists, headings. A heading stays with what follows. */
export const prose = (setter: Setter, markdown: string, types: ProseTypes): readonly FlowItem[] => {
  const gap = types.roman.leading * PARAGRAPH_GAP;
  const set = (tokens: readonly Token[]): readonly FlowItem[] => {
    const items: FlowItem[] = [];
    for (let at = 0; at < tokens.length; at++) {
      const token = tokens[at];
      if (token === undefined) continue;
      const end = token.nesting === 1 ? ended(tokens, at) : at;
      const inside = tokens.slice(at + 1, end);
      if (token.type === 'heading_open' || token.type === 'paragraph_open') {
        const heading = token.type === 'heading_open';
        const parts = inside.flatMap((child) => inline(child.children ?? [], types));
        const words = heading ? [{ text: parts.map((part) => part.text).join(''), type: types.heading }] : parts;
        if (words.length > 0) {
          items.push({
            block: tagged(heading ? 'H3' : 'P', spans(setter, words)),
            above: heading ? gap * 2 : gap,
            withNext: heading,
          });
        }
      } else if (token.type === 'bullet_list_open' || token.type === 'ordered_list_open') {
        items.push({ block: listBlock(inside, token.type === 'ordered_list_open'), above: gap });
      } else if (token.type === 'blockquote_open') items.push(...set(inside));
      else if (token.type === 'fence' || token.type === 'code_block') {
        items.push({ block: tagged('P', text(setter, token.content.trim(), types.roman)), above: gap });
      }
      at = end;
    }
    return items;
  };
  const listBlock = (tokens: readonly Token[], numbered: boolean): Block => {
    const rows: Block[] = [];
    for (let at = 0; at < tokens.length; at++) {
      if (tokens[at]?.type !== 'list_item_open') continue;
      const end = ended(tokens, at);
      const body = stack(
        set(tokens.slice(at + 1, end)).map(({ block }) => block),
        gap,
      );
      const label = numbered ? `${rows.length + 1}.` : '–';
      rows.push(
        tagged(
          'LI',
          row([
            { width: BULLET, block: tagged('Lbl', text(setter, label, types.roman)) },
            { width: { share: 1 }, block: tagged('LBody', body) },
          ]),
        ),
      );
      at = end;
    }
    return tagged('L', rows.length > 0 ? stack(rows, gap * 0.6) : drawn(0, () => undefined));
  };
  return set(parser.parse(markdown, {}));
};
