/** The stack, what levels are, and the numbers that their drawings have on paper. */

import { diagnose, guessFix } from '../../language/diagnostic.js';
import type { CelName, StatementOf, Word } from '../../language/tree.js';
import { type Binders, type Binding, levelOf } from '../binding.js';
import { SCAN_PARTS, unknownPart } from '../scan-names.js';
import type { Pinned } from '../shot.js';
import { single } from './bind-sheet.js';

function celText(name: CelName): string {
  if (name.form === 'unused') return '_';
  if (name.form === 'key') return name.name;
  return `${name.key}${name.to === null ? '' : `>${name.to}`}.${name.index}${name.letter}`;
}

function pinned(name: CelName): Pinned {
  if (name.form !== 'between') return name;
  const { span, key, to, index, letter } = name;
  return { span, form: 'between', name: { key, to, index, letter } };
}

/** Reports a level that the cut does not have. */
export function unknownLevel(word: Word, { draft, broken, guess: guessName, report }: Binding): void {
  if (broken.has(word.text)) return;
  const guess = guessName(word.text, draft.levels.keys());
  report(
    diagnose(
      'unknown-level',
      word.span,
      { name: word.text, guess: guess ?? null },
      guessFix(guess, word.span),
    ),
  );
}

/** A level that is written outside the given stack. */
export function insideStack(word: Word, { draft, guess: guessName, report }: Binding): void {
  const stack = draft.stack;
  if (!stack || stack.levels.some((each) => each.text === word.text)) return;
  const guess = guessName(
    word.text,
    stack.levels.map((each) => each.text),
  );
  const end = { ...stack.span, start: stack.levels.at(-1)!.span.end, end: stack.levels.at(-1)!.span.end };
  report(
    diagnose(
      'level-outside',
      word.span,
      { name: word.text, guess: guess ?? null },
      {
        notes: [{ note: 'stack-here', span: stack.span }],
        fix: {
          action: 'put-on-stack',
          level: word.text,
          edits: [{ span: end, text: ` ${word.text}` }],
        },
      },
    ),
  );
}

function checkStated(statement: StatementOf<'level'>, { draft, report }: Binding): void {
  const { level, size, reuse, picture } = statement;
  if (size && !(size.widthMm > 0 && size.heightMm > 0)) {
    report(diagnose('size-zero', size.span, { level: level.text }));
  }
  if (reuse && reuse.cut === draft.cut?.number && reuse.level === level.text) {
    report(diagnose('reuse-self', reuse.span, { level: level.text }));
  }
  const unknown = picture && unknownPart(picture.text);
  if (picture && unknown !== null) {
    report(diagnose('scan-name', picture.span, { written: unknown, parts: SCAN_PARTS }));
  }
}

/** Levels that a `level` statement names besides its own. */
function checkOthers(
  { level, ...parts }: StatementOf<'level'>,
  part: 'with' | 'masks',
  binding: Binding,
): void {
  const words = parts[part] ?? [];
  for (const word of words) {
    if (word.text === level.text)
      binding.report(diagnose('level-to-itself', word.span, { part, level: word.text }));
  }
  levelsOf(
    words.filter(({ text }) => text !== level.text),
    binding,
  );
}

export const levelBinders: Pick<Binders, 'stack' | 'level' | 'cels'> = {
  stack: {
    once: single,
    declare(statement, draft, report) {
      draft.stack = statement;
      const seen = new Map<string, Word>();
      for (const word of statement.levels) {
        const first = seen.get(word.text);
        if (first) {
          report(
            diagnose(
              'stack-twice',
              word.span,
              { level: word.text },
              {
                notes: [{ note: 'stands-first-here', span: first.span }],
                fix: {
                  action: 'take-out-here',
                  edits: [{ span: { ...word.span, start: word.span.start - 1 }, text: '' }],
                },
              },
            ),
          );
          continue;
        }
        seen.set(word.text, word);
        levelOf(draft, word);
      }
    },
  },
  level: {
    once: ({ level }) => ({
      code: 'statement-twice',
      parameters: { statement: 'level', name: level.text },
    }),
    declare(statement, draft) {
      levelOf(draft, statement.level).stated = statement;
    },
    // The cut's own statement stands before that of a used file; a level that only a used file names is not in the cut.
    share(statement, draft) {
      draft.shared.set(statement.level.text, statement);
    },
    bind(statement, binding) {
      insideStack(statement.level, binding);
      checkStated(statement, binding);
      for (const part of ['with', 'masks'] as const) checkOthers(statement, part, binding);
    },
  },
  cels: {
    once: ({ level }) => ({
      code: 'statement-twice',
      parameters: { statement: 'cels', name: level.text },
    }),
    bind(statement, binding) {
      const level = binding.draft.levels.get(statement.level.text);
      if (!level) {
        unknownLevel(statement.level, binding);
        return;
      }
      const seen = new Map<string, CelName>();
      for (const name of statement.names) {
        const text = celText(name);
        const first = seen.get(text);
        if (first && name.form !== 'unused') {
          binding.report(
            diagnose(
              'cels-twice',
              name.span,
              { drawing: text },
              {
                notes: [{ note: 'stands-first-here', span: first.span }],
                fix: { action: 'leave-number', edits: [{ span: name.span, text: '_' }] },
              },
            ),
          );
        }
        if (!first) seen.set(text, name);
      }
      const names = statement.names.map((name) =>
        seen.get(celText(name)) === name ? pinned(name) : { form: 'unused' as const, span: name.span },
      );
      level.pinned = { span: statement.span, names };
    },
  },
};

/** Names of the levels that are there, each once; others are reported. Without a stack BG is always there. */
export function levelsOf(words: readonly Word[], binding: Binding): string[] {
  const { draft, report } = binding;
  const names: string[] = [];
  for (const word of words) {
    if (!draft.levels.has(word.text) && !(word.text === 'BG' && !draft.stack)) unknownLevel(word, binding);
    else if (!names.includes(word.text)) names.push(word.text);
    else report(diagnose('level-repeated', word.span, { level: word.text }));
  }
  return names;
}

// ---- timelines and phrases

export const timelineBinders: Pick<Binders, 'timeline' | 'phrase'> = {
  timeline: {
    once: ({ level }) => ({
      code: 'statement-twice',
      parameters: { statement: '', name: level.text },
    }),
    declare: (statement, draft) => void levelOf(draft, statement.level),
    bind(statement, binding) {
      insideStack(statement.level, binding);
      const level = levelOf(binding.draft, statement.level);
      const bound = binding.recall(statement, binding);
      const { whole, direct } = bound;
      level.title = statement.title?.text ?? '';
      level.timeline = {
        span: statement.span,
        whole,
        direct,
        // Not asked for before somebody asks: what was bound before is made ready then.
        get items() {
          return bound.items;
        },
      };
    },
  },
  phrase: {
    once: ({ name }) => ({ code: 'name-twice', parameters: { of: 'phrase', name: name.text } }),
    declare: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    share: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    bind: ({ name }, { phrases, draft }) => phrases.check(name.text, draft.on),
  },
};
