/** What an editor sees after any number of edits is what a fresh look at the same texts gives. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { DocumentText } from '../../src/lsp/document-text.js';
import { completionsAt } from '../../src/lsp/editor-completion.js';
import { formatEdits } from '../../src/lsp/format-edits.js';
import { hoverAt } from '../../src/lsp/hover.js';
import { diagnosticsOf } from '../../src/lsp/lsp-diagnostics.js';
import { foldsOf, symbolsOf } from '../../src/lsp/outline.js';
import { definitionAt, renameAt } from '../../src/lsp/references.js';
import { semanticTokensIn } from '../../src/lsp/semantic-tokens.js';
import { hintsIn } from '../../src/lsp/timeline-frames.js';
import { Workspace } from '../../src/lsp/workspace.js';
import { cutTexts } from '../generate.js';

const MANIFEST = 'title: Samphire Ferry\n';
const HOUSE = 'phrase stroll = 1--2--\nfield wide 80%\nlevel BG size 560x200mm\n';
const CUT = 'file:///work/c1.cut';
const SHARED = 'file:///work/house.cut';

/** Pieces that a hand might put anywhere. */
const SCRAPS = [
  '1',
  '-',
  '=',
  '..',
  ':',
  '@',
  '(',
  ')',
  ')*2',
  '{late}',
  '"',
  '#',
  ' ',
  '\n',
  '\n ',
  'x',
  '5+0',
  'ア',
  'ー',
  '１',
  '\r\n',
  '\nA: 1..',
  '\nuse "house.cut"\n',
  '\nmark hit 1+2\n',
  '@hit',
  ' stroll ',
  '\npan full@1 > wide@24',
  '\nvoice "Pim" 1..24 "…"\n',
  '𠮷',
  '\ufeff',
  '\0',
];

interface Change {
  readonly at: number;
  readonly out: number;
  readonly put: string;
  readonly house: boolean;
}

const changes: fc.Arbitrary<Change[]> = fc.array(
  fc.record({
    at: fc.nat({ max: 9999 }),
    out: fc.nat({ max: 6 }),
    put: fc.constantFrom('', ...SCRAPS),
    house: fc.integer({ min: 0, max: 9 }).map((die) => die === 0),
  }),
  { minLength: 1, maxLength: 6 },
);

function changed(text: DocumentText, { at, out, put }: Change): DocumentText {
  const length = text.text.length + 1;
  const start = at % length;
  return text.changed(text.range({ start, end: Math.min(start + out, length - 1) }), put);
}

async function told(workspace: Workspace): Promise<unknown> {
  const analysis = (await workspace.analysis(CUT))!;
  const whole = { start: 0, end: analysis.text.text.length };
  return {
    diagnostics: diagnosticsOf(workspace, analysis),
    hints: hintsIn(analysis, whole),
    symbols: symbolsOf(analysis),
    tokens: semanticTokensIn(analysis).data,
    tree: analysis.compiled!.tree,
    levels: analysis.compiled!.solved?.levels,
  };
}

test('after random edits the problems are those of a fresh look', async () => {
  await fc.assert(
    fc.asyncProperty(cutTexts({ pieces: 4, levels: { max: 3 } }), changes, async (text, edits) => {
      const host = () => memoryHost({ '/work/episode.yaml': MANIFEST });
      const kept = new Workspace(host());
      let cut = new DocumentText(text, 'utf-16');
      let house = new DocumentText(HOUSE, 'utf-16');
      kept.put(CUT, 0, cut);
      kept.put(SHARED, 0, house);
      for (const [version, edit] of edits.entries()) {
        if (edit.house) {
          house = changed(house, edit);
          kept.put(SHARED, version, house);
        } else {
          cut = changed(cut, edit);
          kept.put(CUT, version, cut);
        }
        const fresh = new Workspace(host());
        fresh.put(SHARED, version, house);
        fresh.put(CUT, version, cut);
        expect(await told(kept)).toEqual(await told(fresh));
      }
    }),
    { numRuns: 60 },
  );
});

test('no question about any place of any text fails, and ranges lie inside it', async () => {
  await fc.assert(
    fc.asyncProperty(cutTexts({ pieces: 4, levels: { max: 3 } }), changes, async (text, edits) => {
      const workspace = new Workspace(
        memoryHost({ '/work/episode.yaml': MANIFEST, '/work/house.cut': HOUSE }),
      );
      let cut = new DocumentText(text, 'utf-16');
      for (const edit of edits) cut = changed(cut, edit);
      workspace.put(CUT, 1, cut);
      const analysis = (await workspace.analysis(CUT))!;
      foldsOf(analysis);
      for (const { range } of formatEdits(analysis))
        expect(cut.offset(range.end)).toBeGreaterThanOrEqual(cut.offset(range.start));
      for (const { at } of edits) {
        const offset = at % (cut.text.length + 1);
        const hover = hoverAt(workspace, analysis, offset);
        if (hover?.range) {
          expect(cut.offset(hover.range.start)).toBeLessThanOrEqual(offset);
          expect(cut.offset(hover.range.end)).toBeGreaterThanOrEqual(offset);
        }
        completionsAt(workspace, analysis, offset, { snippets: true, blank: false });
        definitionAt(workspace, analysis, offset);
        try {
          renameAt(workspace, analysis, offset, 'fresh');
        } catch (fault) {
          // A refusal, in words; anything else would be a fault of the program.
          expect(fault).toHaveProperty('code');
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('places go to offsets and back, in both encodings', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...SCRAPS, 'é', 'か\u3099', '🎞', '\r'), { maxLength: 30 }),
      fc.constantFrom('utf-16' as const, 'utf-8' as const),
      (parts, encoding) => {
        const text = new DocumentText(parts.join(''), encoding);
        let offset = 0;
        for (const character of text.text) {
          const place = text.position(offset);
          // Between CR and LF there is no place of its own: it is the end of the line.
          const back = text.offset(place);
          expect(text.text.slice(back, offset)).toMatch(/^\r?$/);
          offset += character.length;
        }
      },
    ),
  );
});

test('a renamed name leaves the same sheet, and no new problem', async () => {
  await fc.assert(
    fc.asyncProperty(cutTexts({ pieces: 4, levels: { max: 3 } }), fc.nat({ max: 99 }), async (text, pick) => {
      const workspace = new Workspace(memoryHost({ '/work/episode.yaml': MANIFEST }));
      workspace.put(CUT, 1, new DocumentText(text, 'utf-16'));
      const before = (await workspace.analysis(CUT))!;
      const named = before.index.names.filter(({ name }) => name !== 'BG' && name !== 'full');
      const { span, name, kind } = named[pick % named.length]!;
      const { changes = {} } = renameAt(workspace, before, span.start, 'fresh名');
      let cut = before.text;
      for (const { range, newText } of [...changes[CUT]!].reverse()) cut = cut.changed(range, newText);
      workspace.put(CUT, 2, cut);
      const after = (await workspace.analysis(CUT))!;
      const codes = ({ compiled }: typeof before) => compiled!.diagnostics.map(({ code }) => code).sort();
      expect(codes(after)).toEqual(codes(before));
      expect(after.index.names.some((one) => one.kind === kind && one.name === name)).toBe(false);
      const cels = ({ compiled }: typeof before) =>
        compiled!.solved!.levels.map((level) => level.exposures.map(({ cel }) => cel));
      expect(cels(after)).toEqual(cels(before));
      // Back again gives the same text.
      const again = after.index.names.find((one) => one.kind === kind && one.name === 'fresh名')!;
      const back = renameAt(workspace, after, again.span.start, name).changes![CUT]!;
      for (const { range, newText } of [...back].reverse()) cut = cut.changed(range, newText);
      expect(cut.raw).toBe(text);
    }),
    { numRuns: 60 },
  );
});
