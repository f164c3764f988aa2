/** The cut as a whole, its levels and their artwork. */

import type { Was } from '../../compare/change.js';
import type { ChangeSentences } from '../change-sentences.js';
import { plural } from '../number-format.js';
import { at, by, longer, none, quoted, size, was } from './change-parts-en.js';
import type { EnglishTerms } from './terms-en.js';

const plain = (label: string) => (change: Was<string>) =>
  `${label} ${change.now || 'none'} ${was(change.old || 'none')}`;
const names = (list: readonly string[]) => list.join(', ') || 'nobody';

export const levelsIn = ({ cut, scene }: EnglishTerms) =>
  ({
    cut: ({ old, now }) => `${cut} ${now} ${was(old)}`,
    time: ({ old, now }, t) => `${cut} ${longer(now - old, t)}: ${t.length(now)} ${was(t.length(old))}`,
    handles: ({ old, now }, t) =>
      `handles: ${t.length(now.head)} before, ${t.length(now.tail)} after the ${cut} ${was(`${t.length(old.head)}, ${t.length(old.tail)}`)}`,
    fps: ({ old, now }) => `${now} frames a second ${was(old)}`,
    'standard-field': ({ old, now }) => `standard field ${size(now)} ${was(size(old))}`,
    title: ({ old, now }, t) => `title ${none(now, t)} ${was(none(old, t))}`,
    scene: plain(scene),
    take: plain('take'),
    artist: ({ old, now }) => `artist ${names(now)} ${was(names(old))}`,
    memo: ({ old, now }, t) => {
      if (old === null) return `memo added: ${quoted(now!, t)}`;
      return now === null
        ? `memo dropped: ${quoted(old, t)}`
        : `memo reworded: ${quoted(now, t)} ${was(quoted(old, t))}`;
    },
    stack: ({ old, now }) => `stack, bottom to top: ${now.join(' ')} ${was(old.join(' '))}`,
    'level-added': ({ level, title, drawings, above }, t) =>
      `level ${level}${title ? ` ${quoted(title, t)}` : ''} added, ${above ? `above ${above}` : 'at the bottom'}${drawings ? `: ${plural(drawings, 'drawing')}` : ''}`,
    'level-dropped': ({ level, title, drawings }, t) =>
      `level ${level}${title ? ` ${quoted(title, t)}` : ''} dropped${drawings ? `: ${plural(drawings, 'drawing')}` : ''}`,
    'level-renamed': ({ level, old }) => `level ${old} is called ${level}`,
    'level-title': ({ level, old, now }, t) => `${level}: title ${none(now, t)} ${was(none(old, t))}`,
    'artwork-size': ({ level, old, now }) => `${level}: artwork ${size(now)} ${was(size(old))}`,
    'artwork-home': ({ level, old, now }) =>
      `${level}: artwork ${by({ xMm: now.xMm - old.xMm, yMm: now.yMm - old.yMm })}, at ${at(now)} ${was(at(old))}`,
    'level-manner': ({ level, manner: how, now }) =>
      ({
        free: `${level}: its edges ${now ? 'may' : 'must not'} show`,
        carry: `${level}: ${now ? 'fixed to the camera' : 'no longer fixed to the camera'}`,
        flash: `${level}: ${now ? 'its appearing is a flash' : 'no flash any more'}`,
      })[how],
    reuse: ({ level, old, now }) => {
      const from = (it: typeof now) => (it ? `${cut} ${it.cut}, level ${it.level}` : 'none');
      return `${level}: ${now ? `reuse of ${from(now)}` : 'no reuse'} ${was(from(old))}`;
    },
    'level-timed': ({ level, now }) =>
      now ? `${level}: has a timeline now` : `${level}: no timeline any more, simply there`,
    'level-emptied': ({ level }) => `${level}: empty throughout`,
  }) satisfies Partial<ChangeSentences>;
