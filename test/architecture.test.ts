import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const LIB = path.join(import.meta.dirname, '..', 'lib');

/** What each room may import, beside itself. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  vocabulary: ['model'],
  model: ['vocabulary', 'words'],
  words: ['model', 'vocabulary'],
  colour: ['model', 'vocabulary', 'words'],
  comfort: ['model', 'vocabulary', 'words'],
  outfit: ['model', 'vocabulary', 'words', 'colour', 'comfort'],
  plan: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'outfit'],
  bag: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'outfit', 'plan'],
  capsule: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'outfit', 'plan', 'bag'],
  photo: ['model', 'colour'],
  solver: ['plan'],
  content: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'outfit', 'bag', 'photo'],
  guide: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'outfit', 'plan', 'bag', 'capsule', 'content'],
  type: [],
  draw: ['model', 'vocabulary', 'words', 'colour', 'type'],
  print: ['model', 'vocabulary', 'words', 'colour', 'comfort', 'bag', 'guide', 'type', 'draw'],
  site: [
    'model',
    'vocabulary',
    'words',
    'colour',
    'comfort',
    'outfit',
    'bag',
    'capsule',
    'plan',
    'content',
    'guide',
    'draw',
  ],
  serve: ['content', 'model'],
};
const EDGES_OF_NODE = /from '(node:|sharp|@resvg|satori|pdf-lib|fontkit|highs|esbuild|@11ty|chokidar|sirv)/;
const CORE = ['vocabulary', 'model', 'words', 'colour', 'comfort', 'outfit', 'plan', 'bag', 'capsule'];
const IMPURE = /\bDate\.now\(|new Date\(\)|Math\.random\(|\bdocument\.|\bwindow\.|\bprocess\./;

const filesOf = (room: string): readonly { file: string; text: string }[] =>
  readdirSync(path.join(LIB, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => ({ file: path.join(room, file), text: readFileSync(path.join(LIB, room, file), 'utf8') }));

/** Rooms a file imports from, by the real path of what it names. */
const roomsImported = (file: string, text: string): readonly string[] =>
  [...text.matchAll(/from '(\.[^']+)'/g)].map((match) => {
    const target = path.relative(LIB, path.resolve(LIB, path.dirname(file), match[1] ?? ''));
    return target.split(path.sep)[0] ?? '';
  });

describe('imports point one way', () => {
  it.each(Object.keys(ALLOWED))('%s', (room) => {
    const allowed = new Set([room, ...(ALLOWED[room] ?? [])]);
    const wrong = filesOf(room).flatMap(({ file, text }) =>
      roomsImported(file, text)
        .filter((target) => !allowed.has(target))
        .map((target) => `${file} imports ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  it.each(CORE)('%s reads no file, clock or chance', (room) => {
    const wrong = filesOf(room)
      .filter(({ text }) => EDGES_OF_NODE.test(text) || IMPURE.test(text))
      .map(({ file }) => file);
    expect(wrong).toEqual([]);
  });

  it('says in the index of each room what it offers and nothing else', () => {
    const rooms = Object.keys(ALLOWED).filter((room) => room !== 'vocabulary');
    for (const room of [...rooms, 'vocabulary']) {
      const text = readFileSync(path.join(LIB, room, 'index.ts'), 'utf8');
      const statements = text
        .replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
        .split(';')
        .map((line) => line.trim());
      expect(
        statements.filter((line) => line !== '' && !line.startsWith('export')),
        room,
      ).toEqual([]);
    }
  });
});
