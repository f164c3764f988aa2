/** What a cut is, how long it lasts and the names of its moments; words on the sheet: dialogue, sound, notes, memos, who and which; warnings that are accepted. */

import { type ParsingDsl, type SharedRules, touches } from '../shared-rules.js';
import {
  At,
  Dash,
  DotDot,
  Name,
  PartSeconds,
  Plus,
  Timecode,
  type Token,
  WholeSeconds,
  word,
} from '../tokens.js';
import type { Quote, RecordingTime, Said, StatementOf, Word } from '../tree.js';
import { mouthStatement } from './mouth-statement.js';
import { type StatementRule, statement } from './statement-rule.js';

const OFF = word('off');
const MONO = word('mono');
const FROM = word('from');

/** Pieces of text, any of them tied to a row: `"Wait" @1+14 "for" @1+20 "me!"`. */
function said(dsl: ParsingDsl, { position, text }: SharedRules): Said[] {
  const words: Said[] = [];
  dsl.AT_LEAST_ONE({
    DEF: () => {
      const at = dsl.OPTION(() => {
        dsl.CONSUME(At);
        return dsl.SUBRULE(position);
      });
      const quote = dsl.SUBRULE(text);
      words.push({ ...quote, at: at ?? null });
    },
    ERR_MSG: 'quoted-words',
  });
  return words;
}

function inSeconds(dsl: ParsingDsl, token: Token): RecordingTime {
  return { span: dsl.place(token), form: 'seconds', seconds: Number(token.image.slice(0, -1)) };
}

/** `3`, `3B`, `"3 of 5"`. */
function labelOrText(dsl: ParsingDsl, { label, text }: SharedRules): Word | Quote {
  return dsl.OR<Word | Quote>({
    DEF: [{ ALT: () => dsl.SUBRULE(label) }, { ALT: () => dsl.SUBRULE(text) }],
    ERR_MSG: 'scene-number',
  });
}

export const sheetStatements: readonly StatementRule[] = [
  statement('voice', 'voice "Nao" 1+6..2+20 "Wait for me!"', (dsl, shared) => {
    const manner = dsl.RULE('manner', (): StatementOf<'voice'>['manner'] => {
      const token = dsl.OR([{ ALT: () => dsl.CONSUME(OFF) }, { ALT: () => dsl.CONSUME(MONO) }]);
      return token.type === OFF ? 'off' : 'mono';
    });
    /** `off..2+0`, `mono+6..`: a mark may have such a name. */
    const rangeBegins = (): boolean => [DotDot, Plus, Dash].includes(dsl.LA(2).type);
    return () => ({
      kind: 'voice',
      speaker: dsl.SUBRULE(shared.text),
      manner: dsl.OPTION({ GATE: () => !rangeBegins(), DEF: () => dsl.SUBRULE(manner) }) ?? 'on',
      range: dsl.SUBRULE(shared.range),
      words: said(dsl, shared),
    });
  }),
  statement('sound', 'sound 3+1..3+8 "door slams"', (dsl, shared) => () => ({
    kind: 'sound',
    range: dsl.SUBRULE(shared.range),
    words: said(dsl, shared),
  })),
  statement('music', 'music 1+1..5+0 "theme, softly"', (dsl, shared) => () => ({
    kind: 'music',
    range: dsl.SUBRULE(shared.range),
    words: said(dsl, shared),
  })),
  statement('track', 'track "sound/c012.wav"', (dsl, { position, text }) => {
    const recordingTime = dsl.RULE('recordingTime', () =>
      dsl.OR<RecordingTime>({
        DEF: [
          { ALT: () => inSeconds(dsl, dsl.CONSUME(WholeSeconds)) },
          { ALT: () => inSeconds(dsl, dsl.CONSUME(PartSeconds)) },
          {
            ALT: (): RecordingTime => {
              const token = dsl.CONSUME(Timecode);
              const [hours = 0, minutes = 0, seconds = 0, frames = 0] = token.image.split(':').map(Number);
              return { span: dsl.place(token), form: 'timecode', hours, minutes, seconds, frames };
            },
          },
        ],
        ERR_MSG: 'recording-time',
      }),
    );
    return () => ({
      kind: 'track',
      path: dsl.SUBRULE(text),
      at:
        dsl.OPTION(() => {
          dsl.CONSUME(At);
          return dsl.SUBRULE(position);
        }) ?? null,
      from:
        dsl.OPTION(() => {
          dsl.CONSUME(FROM);
          return dsl.SUBRULE(recordingTime);
        }) ?? null,
    });
  }),
  mouthStatement,
  statement('note', 'note 2+12 "glance at the door"', (dsl, { position, text }) => () => ({
    kind: 'note',
    position: dsl.SUBRULE(position),
    text: dsl.SUBRULE(text),
  })),
  statement('memo', 'memo "Wind from screen left throughout."', (dsl, { text }) => () => ({
    kind: 'memo',
    text: dsl.SUBRULE(text),
  })),
  statement('scene', 'scene 3', (dsl, shared) => () => ({ kind: 'scene', value: labelOrText(dsl, shared) })),
  statement('take', 'take 2', (dsl, shared) => () => ({ kind: 'take', value: labelOrText(dsl, shared) })),
  statement('same', 'same 4 "the stairs"', (dsl, { label, text }) => () => ({
    kind: 'same',
    cut: dsl.SUBRULE(label),
    text: dsl.OPTION(() => dsl.SUBRULE(text)) ?? null,
  })),
  statement('artist', 'artist "M. Arai"', (dsl, { text }) => () => ({
    kind: 'artist',
    name: dsl.SUBRULE(text),
  })),
  statement('accept', 'accept strobing "tried at the rushes, looks right"', (dsl, { text }) => {
    /** Names with hyphens between and no blanks: `timeline-short`. */
    const code = dsl.RULE('code', (): Word => {
      const token = dsl.CONSUME(Name, { ERR_MSG: 'message-code' });
      dsl.MANY({
        GATE: () => touches(dsl.LA(0), dsl.LA(1)) && touches(dsl.LA(1), dsl.LA(2)),
        DEF: () => {
          dsl.CONSUME(Dash);
          dsl.CONSUME(Name);
        },
      });
      const span = dsl.since(token);
      return dsl.ACTION((): Word => ({ span, text: dsl.typed(span).normalize('NFKC') }));
    });
    return () => ({ kind: 'accept', code: dsl.SUBRULE(code), reason: dsl.SUBRULE(text) });
  }),
];

// ---- What a cut is, how long it lasts, and the names of its moments

export const timeStatements: readonly StatementRule[] = [
  statement('cut', 'cut 12 "Rooftop, dusk"', (dsl, { label, text }) => () => ({
    kind: 'cut',
    number: dsl.SUBRULE(label),
    title: dsl.OPTION(() => dsl.SUBRULE(text)) ?? null,
  })),
  statement('time', 'time 5+0', (dsl, { length }) => () => ({ kind: 'time', time: dsl.SUBRULE(length) })),
  statement('fps', 'fps 24', (dsl, { whole }) => () => ({ kind: 'fps', value: dsl.SUBRULE(whole) })),
  statement('on', 'on 3', (dsl, { whole }) => () => ({ kind: 'on', value: dsl.SUBRULE(whole) })),
  statement(
    'mark',
    'mark hit 2+6',
    (dsl, { name, position }) =>
      () => ({ kind: 'mark', name: dsl.SUBRULE(name), position: dsl.SUBRULE(position) }),
    { defines: true },
  ),
];
