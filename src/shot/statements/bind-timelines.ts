/** Timelines and phrases. */

import type { Binders } from '../binding.js';
import { levelOf } from '../binding.js';
import { insideStack } from './bind-levels.js';

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
      const { items, whole } = binding.phrases.timeline(statement.items, binding.draft.on);
      level.title = statement.title?.text ?? '';
      level.timeline = { span: statement.span, items, whole };
    },
  },
  phrase: {
    once: ({ name }) => ({ code: 'name-twice', parameters: { of: 'phrase', name: name.text } }),
    declare: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    share: (statement, draft) => void draft.phrases.set(statement.name.text, statement),
    bind: ({ name }, { phrases, draft }) => phrases.check(name.text, draft.on),
  },
};
