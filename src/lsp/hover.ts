/** What is said of the place under the cursor. Markdown. */

import type { Hover } from 'vscode-languageserver';
import { type Code, catalogue } from '../language/catalogue/index.js';
import type { Span } from '../language/diagnostic.js';
import { aboutCode } from '../language/message.js';
import { byWord } from '../language/statements/statement-table.js';
import type { Position, Statement, Time, Tree } from '../language/tree.js';
import type { UserLanguage } from '../language/user-language.js';
import { pageIn, referenceWords } from '../reference/reference-language.js';
import { holdsWord, ruleOf, statementPages } from '../reference/statement-pages.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';
import { lineText, mouthText } from './hover-speech.js';
import { drawingAt, fieldText, groupAt, levelText, moveText, phraseText } from './hover-texts.js';
import { hoverWords } from './hover-words.js';
import { nameAtOffset, spanTouches } from './name-index.js';
import { NameScope } from './name-scope.js';
import type { Analysis, Workspace } from './workspace.js';

interface HoverText {
  readonly span: Span;
  readonly text: string;
}

export function hoverAt(workspace: Workspace, analysis: Analysis, offset: number): Hover | null {
  const said = hoverTextAt(workspace, analysis, offset);
  return (
    said && {
      contents: { kind: 'markdown', value: said.text },
      range: analysis.text.range(said.span),
    }
  );
}

function hoverTextAt(workspace: Workspace, analysis: Analysis, offset: number): HoverText | null {
  const { compiled, index } = analysis;
  const tree = compiled?.tree;
  if (!tree) return null;
  const reuse = index.reuses.find(({ cutSpan }) => spanTouches(cutSpan, offset));
  if (reuse) {
    const cut = new NameScope(workspace, analysis)
      .lenderAt(offset)
      ?.tree.statements.find(({ kind }) => kind === 'cut');
    const title = (cut?.kind === 'cut' && cut.title?.text) || '';
    const words = hoverWords(analysis.language);
    return {
      span: reuse.cutSpan,
      text: cut ? words.cut(reuse.cut, title) : words.noCut(reuse.cut),
    };
  }
  const statement = tree.statements.find(({ span }) => spanTouches(span, offset));
  if (!statement) return null;
  if (statement.kind === 'accept' && spanTouches(statement.code.span, offset)) {
    const text = codeText(statement.code.text, analysis.language);
    return text ? { span: statement.code.span, text } : null;
  }
  const named = nameAtOffset(index, offset);
  const time = index.times.find((one) => spanTouches(one.span, offset));
  if (named && named.kind !== 'mark') {
    const text = nameText(analysis, named.kind, named.name);
    const played =
      named.kind === 'phrase' && statement.kind === 'timeline' ? groupAt(analysis, statement, offset) : null;
    if (text) return { span: named.span, text: played ?? text };
  }
  if (named?.kind === 'mark' && !time) {
    const { name, span } = named;
    const here: Position = { kind: 'position', span, form: 'mark', name, offset: 0 };
    const text = timeText(analysis, here, tree);
    if (text) return { span, text };
  }
  const timed = time ? timeText(analysis, time, tree) : null;
  if (statement.kind === 'timeline' || statement.kind === 'phrase') {
    const drawing = drawingAt(analysis, offset);
    const group =
      !drawing && !timed && statement.kind === 'timeline' ? groupAt(analysis, statement, offset) : null;
    const text = [drawing, group, timed].filter((one) => one !== null).join('\n\n');
    if (text) return { span: time?.span ?? itemSpan(statement.items, offset) ?? statement.span, text };
  } else if (time && timed) return { span: time.span, text: timed };
  const made =
    statement.kind === 'mouth'
      ? mouthText(analysis, statement.level.text)
      : statement.kind === 'voice'
        ? lineText(analysis, statement)
        : moveText(analysis, statement.span.start, statement.span.file);
  if (statement.kind === 'track' && spanTouches(statement.path.span, offset)) {
    const text = trackText(analysis);
    if (text) return { span: statement.path.span, text };
  }
  if (spanTouches(statement.word, offset) && statement.kind !== 'timeline') {
    const word = analysis.text.text.slice(statement.word.start, statement.word.end);
    const text = [made, statementText(word, analysis.language)].filter((one) => one !== null).join('\n\n');
    if (text) return { span: statement.word, text };
  }
  const text = [wordInside(analysis, statement, offset), made].filter((one) => one !== null).join('\n\n');
  return text ? { span: statement.span, text } : null;
}

/** What the recording is, and on which rows it is heard. */
function trackText({ compiled, language }: Analysis): string | null {
  const solved = compiled?.solved;
  const sound = solved?.track?.sound;
  if (!sound) return null;
  const { seconds, sampleRate, channels } = sound;
  const words = hoverWords(language);
  return words.recording(seconds, sampleRate / 1000, channels) + words.heard(solved.track.heard);
}

function nameText(analysis: Analysis, kind: 'level' | 'field' | 'phrase', name: string): string | null {
  if (kind === 'level') return levelText(analysis, name);
  return kind === 'field' ? fieldText(analysis, name) : phraseText(analysis, name);
}

/** The smallest item under the cursor. */
function itemSpan(items: readonly object[], offset: number): Span | null {
  for (const item of items as readonly { span: Span; items?: readonly object[] }[]) {
    if (!spanTouches(item.span, offset) || item.span.end === offset) continue;
    return (item.items && itemSpan(item.items, offset)) ?? item.span;
  }
  return null;
}

function timeText({ compiled, episode, language }: Analysis, time: Time, tree: Tree): string | null {
  const fps = compiled?.shot?.fps ?? episode.settings.fps;
  const frames = framesOf(time, tree, fps);
  if (frames === null || !Number.isSafeInteger(frames) || frames < 0) return null;
  const words = hoverWords(language);
  if (time.kind === 'length') return words.asLength(frames, fps);
  const mark = time.form === 'mark' ? words.mark(time.name, time.offset) : '';
  return frames < 1 ? null : mark + words.asPosition(frames, fps);
}

/** Marks may hang on marks; null for one that is not there or hangs on itself. */
function framesOf(time: Time, tree: Tree, fps: number): number | null {
  let offset = 0;
  let at: Time = time;
  for (const seen = new Set<string>(); at.form === 'mark'; ) {
    const { name } = at;
    offset += at.offset;
    const mark = tree.statements.find((one) => one.kind === 'mark' && one.name.text === name);
    if (mark?.kind !== 'mark' || seen.has(name)) return null;
    seen.add(name);
    at = mark.position;
  }
  const unit = at.form === 'seconds' ? at.seconds * fps : at.form === 'feet' ? at.feet * FRAMES_A_FOOT : 0;
  return unit + at.frames + offset;
}

// ---- what the reference says of a word of the language

/** A message by its code. */
/** What a message means, as Markdown; null where there is none of that code. */
export function codeText(code: string, language: UserLanguage): string | null {
  if (!Object.hasOwn(catalogue, code)) return null;
  const { title, explanation } = aboutCode(code as Code, language);
  const severity = referenceWords(language).severities[catalogue[code as Code].severity];
  return `**${code}** (${severity}): ${title}\n\n${explanation}`;
}

/** A statement's first word: what it says, an example, what may stand in it. */
export function statementText(word: string, language: UserLanguage): string | null {
  const name = word.normalize('NFKC');
  const page = byWord.has(name) && statementPages[name] ? pageIn(name, language) : undefined;
  if (!page) return null;
  const parts = page.parts.map(([written, meaning]) => `- \`${written}\`: ${meaning}`);
  return [
    `**${name}**: ${page.title}`,
    `\`\`\`cut\n${ruleOf(name).example}\n\`\`\``,
    page.text,
    parts.join('\n'),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** A word inside a statement, such as `ease`; null where the cursor is on none, or on a name that is spelt like one. */
export function wordInside(
  { parsed, index, text, language }: Analysis,
  statement: Statement,
  offset: number,
): string | null {
  const token = parsed.tokens.find(({ kind, span }) => kind.startsWith("'") && spanTouches(span, offset));
  if (!token || token.span.start === statement.word.start) return null;
  if (index.names.some(({ span }) => span.start === token.span.start)) return null;
  const word = token.kind.slice(1, -1);
  const first = text.text.slice(statement.word.start, statement.word.end).normalize('NFKC');
  const name = statement.kind === 'timeline' ? 'timeline' : first;
  const page = statementPages[name] ? pageIn(name, language) : undefined;
  const part = page?.parts.find(([written]) => holdsWord(written, word));
  return part ? `\`${part[0]}\`: ${part[1]}` : null;
}
