/** Where the names of levels, fields, phrases and marks stand in a tree, and every time that is written in it. */

import type { Span } from '../language/diagnostic.js';
import { foldCharacters } from '../language/lexer.js';
import type { Statement, Time, Tree, Word } from '../language/tree.js';

export type NameKind = 'level' | 'field' | 'phrase' | 'mark';

export interface NameOccurrence {
  readonly kind: NameKind;
  /** In NFC. */
  readonly name: string;
  /** The name alone. */
  readonly span: Span;
  readonly defines: boolean;
  readonly statement: Statement;
}

/** `reuse 8/C` */
export interface ReuseMention {
  readonly cut: string;
  readonly level: string;
  readonly cutSpan: Span;
  readonly levelSpan: Span;
}

export interface NameIndex {
  readonly names: readonly NameOccurrence[];
  readonly reuses: readonly ReuseMention[];
  readonly times: readonly Time[];
}

export function nameIndexOf({ statements }: Tree, text: string): NameIndex {
  const names: NameOccurrence[] = [];
  const reuses: ReuseMention[] = [];
  const times: Time[] = [];
  for (const statement of statements) {
    const add = (kind: NameKind, defines: boolean, words: readonly Word[]): void => {
      for (const { text: name, span } of words) names.push({ kind, name, span, defines, statement });
    };
    declared(statement, add);
    if (statement.kind === 'level' && statement.reuse) {
      const { span, cut, level } = statement.reuse;
      const typed = text.slice(span.start, span.end);
      const slash = typed.search(/[/／・]/);
      const before = typed.slice(0, slash).trimEnd().length;
      const behind = typed.length - typed.slice(slash + 1).trimStart().length;
      reuses.push({
        cut,
        level,
        cutSpan: { ...span, end: span.start + before },
        levelSpan: { ...span, start: span.start + behind },
      });
    }
    walk(statement, (node) => {
      const { kind, name, span } = node as Partial<Record<string, unknown>> & { span: Span };
      if (kind === 'phrase' && 'repeat' in node) {
        add('phrase', false, [{ text: name as string, span: beginning(span, name as string, text) }]);
      } else if (kind === 'length' || kind === 'position') {
        const time = node as Time;
        times.push(time);
        if (time.form === 'mark')
          add('mark', false, [{ text: time.name, span: beginning(span, time.name, text) }]);
      }
    });
  }
  return { names: names.sort((a, b) => a.span.start - b.span.start), reuses, times };
}

/** Names that stand in a statement as words of the tree; marks and phrases in timelines are found by walking. */
function declared(
  one: Statement,
  add: (kind: NameKind, defines: boolean, words: readonly Word[]) => void,
): void {
  switch (one.kind) {
    case 'timeline':
    case 'mouth':
      add('level', true, [one.level]);
      break;
    case 'level':
      add('level', true, [one.level]);
      add('level', false, [...(one.with ?? []), ...(one.masks ?? [])]);
      break;
    case 'cels':
      add('level', false, [one.level]);
      break;
    case 'stack':
      add('level', false, one.levels);
      break;
    case 'phrase':
      add('phrase', true, [one.name]);
      break;
    case 'mark':
      add('mark', true, [one.name]);
      break;
    case 'field':
      add('field', true, [one.name]);
      break;
    case 'fix':
      add('field', false, [one.field]);
      break;
    default:
  }
  if ('levels' in one && one.kind !== 'stack') add('level', false, one.levels);
  if (!('options' in one)) return;
  add('level', false, one.options.carry);
  const passed = one.legs.flatMap(({ passing, to, towards }) => (towards ? passing : [...passing, to.value]));
  const drawn = one.legs.flatMap(({ to, towards }) => (towards ? [to.value] : []));
  for (const place of one.from ? [one.from.value, ...passed] : [])
    if ('text' in place) add('field', false, [place]);
  for (const place of drawn) if ('text' in place) add('field', true, [place]);
}

/** Every node under one, itself too. */
function walk(node: object, visit: (node: object) => void): void {
  if (Array.isArray(node)) {
    for (const each of node) if (typeof each === 'object' && each !== null) walk(each, visit);
    return;
  }
  visit(node);
  for (const [name, value] of Object.entries(node)) {
    if (typeof value === 'object' && value !== null && name !== 'span' && name !== 'word') walk(value, visit);
  }
}

/** The part of a span that is the name that it begins with, as it was typed. */
function beginning(span: Span, name: string, text: string): Span {
  if (text.startsWith(name, span.start)) return { ...span, end: span.start + name.length };
  for (let end = span.start + 1; end <= span.end; end++) {
    if (foldCharacters(text.slice(span.start, end)).text.normalize('NFC') === name) return { ...span, end };
  }
  return span;
}

/** Whether an offset stands in a span or at its end, as a cursor does. */
export function spanTouches({ start, end }: { start: number; end: number }, offset: number): boolean {
  return start <= offset && offset <= end;
}

export function nameAtOffset({ names }: NameIndex, offset: number): NameOccurrence | null {
  return names.find(({ span }) => spanTouches(span, offset)) ?? null;
}
