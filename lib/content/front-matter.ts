import matter from 'gray-matter';
import { type Document, isMap, isNode, isScalar, LineCounter, parseDocument } from 'yaml';
import type { Problem } from '../model/index.ts';
import type { ContentFile } from './files.ts';
import type { Read } from './result.ts';
import { yamlFaults } from './yaml-faults.ts';

/** The front matter of a file as plain data, with the means to find the line of any field. */
export interface FrontMatter {
  readonly file: string;
  readonly data: unknown;
  readonly body: string;
  /** 1-based line in the file of a field, or of the nearest thing around it that exists. */
  lineOf(path: readonly (string | number)[]): number;
}

export type FrontMatterResult =
  | { readonly ok: true; readonly matter: FrontMatter }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The opening `---` takes the first line. */
const LINES_BEFORE = 1;

const refuse = (): never => {
  throw new Error('front matter is YAML only');
};
const REFUSED_ENGINES = Object.fromEntries(
  ['js', 'javascript', 'json', 'coffee', 'coffeescript', 'cson', 'toml'].map((name) => [name, refuse]),
);

const lineIn = (document: Document, counter: LineCounter, path: readonly (string | number)[]): number => {
  let node: unknown = document.contents;
  let offset = 0;
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find((item) => isScalar(item.key) && String(item.key.value) === String(step));
      if (pair === undefined) break;
      if (isNode(pair.key) && pair.key.range) offset = pair.key.range[0];
      node = pair.value;
    } else {
      const inner = document.getIn([...path.slice(0, path.indexOf(step) + 1)], true);
      if (!isNode(inner) || !inner.range) break;
      offset = inner.range[0];
      node = inner;
    }
  }
  return counter.linePos(offset).line + LINES_BEFORE;
};

/** Splits a file into front matter and body. YAML 1.2 core schema only: nothing in a file is ever run. */
export const readFrontMatter = ({ path, text }: ContentFile): FrontMatterResult => {
  const fail = (wrong: string, mend: string, line?: number): FrontMatterResult => ({
    ok: false,
    problems: [{ file: path, ...(line === undefined ? {} : { line }), wrong, mend }],
  });
  if (!/^---[ \t]*(yaml)?[ \t]*\n/.test(text)) {
    return text.startsWith('---')
      ? fail('the front matter is not YAML', 'begin the file with a line that holds --- and nothing else', 1)
      : fail(
          'there is no front matter',
          'begin the file with a line ---, then fields such as "name: …", then a line ---',
          1,
        );
  }
  if (!/\n---[ \t]*(\n|$)/.test(text)) {
    return fail('the front matter is never closed', 'put a line --- after the last field', 1);
  }
  const counter = new LineCounter();
  let document: Document | undefined;
  let source = '';
  const parse = (written: string): object => {
    source = written.replace(/^\n/, '');
    document = parseDocument(source, {
      schema: 'core',
      uniqueKeys: true,
      lineCounter: counter,
      prettyErrors: false,
    });
    return document.errors.length > 0 ? {} : ((document.toJS({ maxAliasCount: 0 }) as object | null) ?? {});
  };
  let body: string;
  let data: unknown;
  try {
    const parsed = matter(text, { language: 'yaml', engines: { ...REFUSED_ENGINES, yaml: { parse } } as never });
    body = parsed.content;
    data = parsed.data;
  } catch (error) {
    const message = error instanceof Error ? error.message : '';
    return message.toLowerCase().includes('alias')
      ? fail('the front matter uses an alias (*name)', 'write the value out in full', 1)
      : fail('the front matter cannot be read', 'compare it with a file that works', 1);
  }
  const found = document;
  if (found === undefined) return fail('the front matter is empty', 'add at least "name: …" and "kind: …"', 1);
  if (found.errors.length > 0) {
    return {
      ok: false,
      problems: yamlFaults(found.errors, source, counter).map(({ line, ...fault }) => ({
        file: path,
        line: line + LINES_BEFORE,
        ...fault,
      })),
    };
  }
  return {
    ok: true,
    matter: { file: path, data, body: body.trim(), lineOf: (steps) => lineIn(found, counter, steps) },
  };
};

/** Reads a file by its front matter; the problems are those of the one or the other. */
export const parse = <T>(file: ContentFile, read: (matter: FrontMatter) => Read<T>): Read<T> => {
  const front = readFrontMatter(file);
  return front.ok ? read(front.matter) : { problems: front.problems };
};
