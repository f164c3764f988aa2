/** The episode manifest: YAML to `Episode`, every key checked, every fault with its place. */

import { dirname } from 'node:path';
import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from 'yaml';
import type { DueDay } from '../count/count-stages.js';
import type { Rate } from '../count/stage-rates.js';
import { USUAL_STAGES } from '../count/stage-states.js';
import type { Host } from '../host/host.js';
import type { Code, Messages } from '../language/catalogue/index.js';
import type { Takes } from '../language/catalogue/message-terms.js';
import { type Diagnostic, diagnose, type Fix, guessFix, type Span } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';
import { SCAN_PARTS, unknownPart } from '../shot/scan-names.js';
import {
  CONVENTIONAL,
  defaults,
  FRAMES_A_FOOT,
  LENGTH_UNITS,
  PAPERS,
  type Settings,
} from '../shot/settings.js';
import { LABELS } from '../words/labels.js';
import { writtenGlyphs } from './cut-limits.js';
import { cutKey, type Episode, noEpisode, rowsFault, type Written } from './episode.js';
import { leadsOut } from './file-patterns.js';
import { type KeySlip, keySlips, withoutSlips } from './manifest-slips.js';
import { dueDay, dueKey, pointFor, rate, stageName } from './manifest-stages.js';
import { dpi, pixels, runningTime, sizeMm, type Value, whole } from './manifest-values.js';
import { readText } from './read-text.js';

export const LARGEST_MANIFEST_BYTES = 256 * 1024;

/** Reads the manifest at an absolute path, which messages call `name`. What is wrong in it leaves the default standing. */
export function openEpisode(host: Host, path: string, name: string): Episode {
  const { text, ok, diagnostics } = readText(host, path, name, { largest: LARGEST_MANIFEST_BYTES });
  const bare = { ...noEpisode, file: name, folder: dirname(path), text };
  if (!ok) return { ...bare, diagnostics };
  const read = parseManifest(name, text);
  return { ...bare, ...read, diagnostics: [...read.diagnostics, ...writtenGlyphs(read.printed, text)] };
}

type Read = Pick<
  Episode,
  | 'settings'
  | 'budgetFrames'
  | 'budgetSpan'
  | 'artists'
  | 'cuts'
  | 'drawings'
  | 'production'
  | 'dueCuts'
  | 'printed'
  | 'diagnostics'
>;

/** Reads a manifest's text. Never throws. */
export function parseManifest(file: string, text: string): Read {
  const reader = new Reader(file, text);
  try {
    reader.read();
  } catch (fault) {
    // The YAML library gives up on absurd nesting by running out of stack.
    if (!(fault instanceof RangeError)) throw fault;
    reader.fail('episode-syntax', { file, start: 0, end: 0 }, { variant: 'too-deep' });
  }
  return reader.result();
}

/** A value of the manifest with its place; aliases followed. */
interface Cell {
  readonly node: Node | null;
  readonly span: Span;
}

function readYaml(text: string): Document.Parsed {
  // Equal keys are looked for here: the library's own check compares every key with every other.
  return parseDocument(text, {
    version: '1.2',
    schema: 'core',
    uniqueKeys: false,
    prettyErrors: false,
    lineCounter: new LineCounter(),
  });
}

type Draft = { -readonly [K in keyof Settings]: Settings[K] };

class Reader {
  private readonly draft: Draft = { ...defaults };
  private readonly diagnostics: Diagnostic[] = [];
  private readonly printed: Written[] = [];
  private artists: Episode['artists'][number][] = [];
  private cuts: Written[] | null = null;
  private drawings: Written | null = null;
  private budget: Cell | null = null;
  private rows: Cell | null = null;
  private stages: readonly string[] = USUAL_STAGES;
  /** What is said of stages, judged when their names are known. */
  private dueCell: Cell | null = null;
  private ratesCell: Cell | null = null;
  private readonly due: DueDay[] = [];
  private readonly dueCuts: Written[] = [];
  private readonly rates = new Map<string, Rate>();
  /** What the convention would say otherwise. */
  private readonly own: Partial<Pick<Draft, keyof (typeof CONVENTIONAL)['japan']>> = {};
  private readonly document: Document.Parsed;
  /** Keys without a colon, which are read as if they had one. */
  private readonly slips: readonly KeySlip[];
  /** Where a place of what was read stands in the text. */
  private typed: (at: number) => number = (at) => at;
  private readonly meant = new Map<Node, Node>();

  constructor(
    private readonly file: string,
    private readonly text: string,
  ) {
    const read = readYaml(text);
    const isYaml = read.errors.length === 0 && (read.contents === null || isMap(read.contents));
    const slips = keySlips(text, Object.keys(this.keys), !isYaml);
    const mended = withoutSlips(text, slips);
    const again = slips.length > 0 ? readYaml(mended.text) : read;
    const better = isYaml ? again.errors.length === 0 : again.errors.length < Math.max(read.errors.length, 1);
    this.slips = better ? slips : [];
    this.document = better ? again : read;
    if (better) this.typed = mended.typed;
  }

  read(): void {
    for (const { range, written } of this.slips) {
      const span = { file: this.file, ...range };
      this.fail(
        'episode-syntax',
        span,
        { variant: 'no-colon', written },
        { action: 'write-plain', written, edits: [{ span, text: ': ' }] },
      );
    }
    for (const error of this.document.errors) {
      const [start, end] = error.pos;
      this.fail('episode-syntax', this.place(start, end), {
        variant: 'yaml',
        code: error.code,
        message: error.message,
      });
    }
    if (this.document.errors.length > 0) return;
    const top = this.document.contents;
    if (top === null || (isScalar(top) && top.value === null)) return;
    if (!isMap(top)) {
      this.fail('episode-syntax', this.spanOf(top), { variant: 'no-keys' });
      return;
    }
    this.follow();
    const seen = new Map<string, Span>();
    for (const pair of top.items as Pair<Node, Node | null>[]) this.pair(pair, seen);
    this.dependent();
  }

  result(): Read {
    let budgetFrames: number | null = null;
    if (this.budget)
      this.take(
        this.budget,
        (text) => runningTime(text, this.draft.fps, FRAMES_A_FOOT),
        (frames) => {
          budgetFrames = frames;
        },
      );
    return {
      settings: this.draft,
      budgetFrames,
      budgetSpan: this.budget?.span ?? null,
      artists: this.artists,
      cuts: this.cuts,
      drawings: this.drawings,
      production: { stages: this.stages, due: this.due, rates: this.rates },
      dueCuts: this.dueCuts,
      printed: this.printed,
      diagnostics: this.diagnostics,
    };
  }

  /** Finds what each alias means, in one walk: the last value before it that bears its name. */
  private follow(): void {
    const named = new Map<string, Node>();
    visit(this.document, {
      Node: (_, node) => {
        if (isAlias(node)) {
          const value = named.get(node.source);
          if (value) this.meant.set(node, value);
          else this.fail('episode-syntax', this.spanOf(node), { variant: 'no-anchor', name: node.source });
        } else if ('anchor' in node && node.anchor) named.set(node.anchor, node as Node);
      },
    });
  }

  private pair(pair: Pair<Node, Node | null>, seen: Map<string, Span>): void {
    const span = this.spanOf(pair.key);
    const key = isScalar(pair.key) ? (pair.key.source ?? String(pair.key.value)) : '';
    const handler = Object.hasOwn(this.keys, key) ? this.keys[key] : undefined;
    if (!handler) {
      const offer = nearest(key, Object.keys(this.keys));
      this.fail(
        'episode-key',
        span,
        { variant: 'unknown', key: key === '' ? null : key, guess: offer ?? null },
        offer ? { action: 'write-plain', written: offer, edits: [{ span, text: offer }] } : undefined,
        offer ? [] : [{ note: 'manifest-keys', keys: Object.keys(this.keys) }],
      );
      return;
    }
    const before = seen.get(key);
    if (before) {
      this.fail('episode-key', span, { variant: 'twice', key }, undefined, [
        { note: 'stands-already', span: before },
      ]);
      return;
    }
    seen.set(key, span);
    const cell = this.cell(pair.value, span);
    if (isAlias(pair.value) && cell.node === null) return;
    if (
      cell.node === null ||
      (isScalar(cell.node) && cell.node.value === null && cell.node.source !== '""')
    ) {
      this.fail('episode-value', cell.span, { variant: 'nothing', key });
      return;
    }
    handler(cell);
  }

  /** One entry a key: this is the table of what a manifest may say. */
  private readonly keys: Record<string, (cell: Cell) => void> = {
    title: (cell) => this.words(cell, (text) => (this.draft.title = text)),
    episode: (cell) => this.words(cell, (text) => (this.draft.episode = text)),
    convention: (cell) => this.choice(cell, ['japan', 'west'], (word) => (this.draft.convention = word)),
    labels: (cell) => this.choice(cell, LABELS, (word) => (this.draft.labels = word)),
    paper: (cell) => this.choice(cell, PAPERS, (word) => (this.draft.paper = word)),
    rows: (cell) => {
      this.rows = cell;
    },
    fps: (cell) =>
      this.take(
        cell,
        (text) => whole(text, 1, 120),
        (value) => (this.draft.fps = value),
      ),
    on: (cell) =>
      this.take(
        cell,
        (text) => whole(text, 1, 120),
        (value) => (this.draft.on = value),
      ),
    numbering: (cell) => this.choice(cell, ['sequence', 'frame'], (word) => (this.draft.numbering = word)),
    field: (cell) =>
      this.take(
        cell,
        (text) => sizeMm(text, 10, 2000),
        (value) => (this.own.field = value),
      ),
    fields: (cell) =>
      this.choice(cell, ['12', '16'], (word) => {
        this.draft.fields = Number(word);
      }),
    artwork: (cell) =>
      this.take(
        cell,
        (text) => sizeMm(text, 10, 20000),
        (value) => (this.own.artwork = value),
      ),
    output: (cell) => this.take(cell, pixels, (value) => (this.draft.output = value)),
    scan: (cell) => this.take(cell, dpi, (value) => (this.draft.scanDpi = value)),
    overlap: (cell) => this.choice(cell, ['half', 'full'], (word) => (this.draft.overlap = word)),
    lengths: (cell) => this.choice(cell, LENGTH_UNITS, (word) => (this.own.lengths = word)),
    pegs: (cell) =>
      this.choice(cell, ['flat-round-flat', 'none'], (word) => (this.draft.pegs = word), {
        acme: 'flat-round-flat',
      }),
    budget: (cell) => {
      this.budget = cell;
    },
    artists: (cell) => this.readArtists(cell),
    drawings: (cell) => this.readDrawings(cell),
    stages: (cell) => this.readStages(cell),
    due: (cell) => {
      this.dueCell = cell;
    },
    rates: (cell) => {
      this.ratesCell = cell;
    },
    cuts: (cell) => {
      this.cuts = this.list(cell, { value: 'cuts' });
    },
  };

  /** What can be judged only when the whole manifest has been read. */
  private dependent(): void {
    Object.assign(this.draft, CONVENTIONAL[this.draft.convention], this.own);
    this.readDue();
    this.readRates();
    const { rows } = this;
    if (!rows) return;
    this.take(
      rows,
      (text) => {
        const count = whole(text, 1, 9999);
        const fault = rowsFault(count.ok ? count.value : 0, this.draft);
        return fault === null ? count : { ok: false, takes: { value: 'rows', fault } };
      },
      (value) => (this.draft.rows = value),
    );
  }

  private readDrawings(cell: Cell): void {
    const text = this.scalar(cell);
    if (text === null || text === '') this.fail('episode-value', cell.span, { variant: 'words' });
    else if (leadsOut(text)) this.fail('episode-outside', cell.span, { path: text });
    else {
      const unknown = unknownPart(text);
      if (unknown !== null) this.fail('scan-name', cell.span, { written: unknown, parts: SCAN_PARTS });
      else this.drawings = { text, span: cell.span };
    }
  }

  private readStages(cell: Cell): void {
    const names = this.list(cell, { value: 'stages' }) ?? [];
    const read: string[] = [];
    for (const { text, span } of names) {
      const name = stageName(text);
      if (!name.ok) this.fail('episode-value', span, { variant: 'other', found: text, takes: name.takes });
      else if (read.includes(name.value)) this.fail('episode-value', span, { variant: 'twice', found: text });
      else {
        read.push(name.value);
        this.printed.push({ text: name.value, span });
      }
    }
    if (read.length > 0) this.stages = read;
    else if (names.length === 0 && isSeq(cell.node))
      this.fail('episode-value', cell.span, { variant: 'nothing', key: 'stages' });
  }

  private readDue(): void {
    for (const { key, span, value } of this.pairsOf(this.dueCell, { value: 'due' })) {
      const meant = dueKey(key, this.stages);
      if (meant === null) {
        this.noStage(key, span, true);
        continue;
      }
      const { cut } = meant;
      const stage = meant.stage ?? this.stages.at(-1)!;
      this.take(value, dueDay, (date) => {
        this.due.push({ stage, cut: cut === null ? null : cutKey(cut), date });
      });
      if (cut !== null) this.dueCuts.push({ text: cut, span });
    }
  }

  private readRates(): void {
    const pairs = [...this.pairsOf(this.ratesCell, { value: 'rates' })];
    for (const [i, { key, span, value }] of pairs.entries()) {
      const before = pairs[i - 1];
      // YAML reads `{ finish: 2,50 EUR per drawing }` as `finish: 2` and a key without a value.
      if (before && value.node === null && this.commaIn(before.value, `,${key}`, span)) continue;
      const next = pairs[i + 1];
      if (!this.stages.includes(key)) this.noStage(key, span, false);
      else if (next?.value.node === null && pointFor(`${this.scalar(value)},${next.key}`) !== null) continue;
      else if (!this.commaIn(value, '', value.span))
        this.take(value, rate, (paid) => this.rates.set(key, paid));
    }
  }

  /** Tells an amount with a comma, if it is one. `rest`, which ends with `last`: what stands behind the value. */
  private commaIn(value: Cell, rest: string, last: Span): boolean {
    const found = `${this.scalar(value) ?? ''}${rest}`;
    const written = pointFor(found);
    if (written === null) return false;
    const span = { ...value.span, end: last.end };
    this.fail(
      'episode-value',
      span,
      { variant: 'comma', found, written },
      { action: 'write-plain', written, edits: [{ span, text: written }] },
    );
    return true;
  }

  /** Names with a value each; a name that stands there twice is said. */
  private *pairsOf(cell: Cell | null, takes: Takes): Generator<{ key: string; span: Span; value: Cell }> {
    if (cell === null) return;
    if (!isMap(cell.node)) {
      this.fail('episode-value', cell.span, { variant: 'other', found: null, takes });
      return;
    }
    const seen = new Set<string>();
    for (const pair of cell.node.items as Pair<Node, Node | null>[]) {
      const span = this.spanOf(pair.key);
      const key = isScalar(pair.key)
        ? (pair.key.source ?? String(pair.key.value)).normalize('NFKC').trim()
        : '';
      if (seen.has(key)) this.fail('episode-value', span, { variant: 'twice', found: key });
      else yield { key, span, value: this.cell(pair.value, span) };
      seen.add(key);
    }
  }

  /** `orCut`: a cut would do, too. */
  private noStage(found: string, span: Span, orCut: boolean): void {
    const { stages } = this;
    const offer = nearest(found, stages);
    this.fail(
      'episode-value',
      span,
      { variant: 'stage', found, stages, orCut, guess: offer ?? null },
      offer ? { action: 'write-plain', written: offer, edits: [{ span, text: offer }] } : undefined,
    );
  }

  private readArtists(cell: Cell): void {
    if (!isMap(cell.node)) {
      this.fail('episode-value', cell.span, { variant: 'artists' });
      return;
    }
    for (const pair of cell.node.items as Pair<Node, Node | null>[]) {
      const span = this.spanOf(pair.key);
      const name = isScalar(pair.key) ? (pair.key.source ?? '').trim() : '';
      if (name === '') {
        this.fail('episode-value', span, { variant: 'artist-name' });
        continue;
      }
      const cuts = this.list(this.cell(pair.value, span), { value: 'cuts-of-artist' });
      this.artists.push({ name: { text: name, span }, cuts: cuts ?? [] });
      this.printed.push({ text: name, span });
    }
  }

  /** A single value or a list of them, as text. */
  private list(cell: Cell, takes: Takes): Written[] | null {
    const cells = isSeq(cell.node)
      ? cell.node.items.map((item) => this.cell(item as Node | null, cell.span))
      : [cell];
    const found: Written[] = [];
    for (const entry of cells) {
      const text = this.scalar(entry);
      if (text === null || text === '')
        this.fail('episode-value', entry.span, { variant: 'other', found: null, takes });
      else found.push({ text, span: entry.span });
    }
    return found;
  }

  private words(cell: Cell, set: (text: string) => void): void {
    const text = this.scalar(cell);
    if (text === null) {
      this.fail('episode-value', cell.span, { variant: 'words' });
      return;
    }
    set(text);
    this.printed.push({ text, span: cell.span });
  }

  private choice<T extends string>(
    cell: Cell,
    words: readonly T[],
    set: (word: T) => void,
    /** What words were called before: still read, with a hint. */
    retired: Readonly<Record<string, T>> = {},
  ): void {
    const text = this.scalar(cell);
    const now = text !== null && Object.hasOwn(retired, text) ? retired[text] : undefined;
    if (text !== null && now !== undefined)
      this.fail('word-renamed', cell.span, { word: text, written: now }, guessFix(now, cell.span).fix);
    const word = words.find((one) => one === (now ?? text));
    if (word !== undefined) {
      set(word);
      return;
    }
    const offer =
      text === null
        ? undefined
        : (words.find((one) => one.toLowerCase() === text.normalize('NFKC').toLowerCase()) ??
          nearest(text, words));
    this.fail(
      'episode-value',
      cell.span,
      offer && text !== null
        ? { variant: 'guess', found: text, guess: offer }
        : { variant: 'other', found: text, takes: { value: 'choice', words } },
      offer
        ? { action: 'write-plain', written: offer, edits: [{ span: cell.span, text: offer }] }
        : undefined,
      offer ? [{ note: 'takes', words }] : [],
    );
  }

  private take<T>(cell: Cell, read: (text: string) => Value<T>, set: (value: T) => void): void {
    const text = this.scalar(cell);
    const value = read(text ?? '');
    if (value.ok) set(value.value);
    else this.fail('episode-value', cell.span, { variant: 'other', found: text, takes: value.takes });
  }

  /** The text of a scalar as it was typed (`007` stays so), or null for a list or a map. */
  private scalar(cell: Cell): string | null {
    if (!isScalar(cell.node)) return null;
    const { value, source, type } = cell.node;
    return type === 'PLAIN' ? (source ?? '') : String(value);
  }

  private cell(node: Node | null, fallback: Span): Cell {
    if (node === null || node === undefined) return { node: null, span: fallback };
    const span = this.spanOf(node, fallback);
    // An alias stands for one value. Nothing is ever expanded further than that, so aliases cannot explode.
    return isAlias(node) ? { node: this.meant.get(node) ?? null, span } : { node, span };
  }

  private spanOf(node: unknown, fallback: Span = this.place(0, 0)): Span {
    const range = isScalar(node) || isCollection(node) || isAlias(node) ? node.range : null;
    return range ? this.place(range[0], range[1]) : fallback;
  }

  private place(start: number, end: number): Span {
    const from = Math.min(this.typed(start), this.text.length);
    const to = Math.min(Math.max(this.typed(end), from), this.text.length);
    return { file: this.file, start: from, end: to };
  }

  fail<C extends Code>(
    code: C,
    span: Span,
    parameters: Messages[C],
    fix?: Fix,
    notes: Diagnostic['notes'] = [],
  ): void {
    this.diagnostics.push(diagnose(code, span, parameters, { fix, notes }));
  }
}
