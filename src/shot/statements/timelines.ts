/** Timelines and phrases. */

import { diagnose } from '../../language/diagnostic.js';
import type { Binders } from '../binding.js';
import { levelOf } from '../binding.js';
import { insideStack } from './levels.js';

export const timelineBinders: Pick<Binders, 'timeline' | 'phrase'> = {
  timeline: {
    once: ({ level }) => ({
      code: 'statement-twice',
      id: `timeline ${level.text}`,
      what: `the timeline of level \`${level.text}\``,
    }),
    declare: (statement, draft) => void levelOf(draft, statement.level),
    bind(statement, binding) {
      insideStack(statement.level, binding);
      const level = levelOf(binding.draft, statement.level);
      const { items, whole } = binding.phrases.timeline(statement.items, binding.draft.on);
      level.title = statement.title?.text ?? '';
      level.timeline = { span: statement.span, items, whole };
    },
  },
  phrase: {
    once: ({ name }) => ({ code: 'name-twice', id: `phrase ${name.text}`, what: `phrase \`${name.text}\`` }),
    declare: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    share: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    bind({ name }, { phrases, draft, report }) {
      phrases.check(name.text, draft.on);
      if (phrases.played.has(name.text)) return;
      report(diagnose('phrase-unused', name.span, `Nothing plays phrase \`${name.text}\`.`));
    },
  },
};
