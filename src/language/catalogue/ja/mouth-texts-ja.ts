import { figure } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { MouthMessages } from '../mouth-codes.js';
import { meant } from './terms-texts-ja.js';

const UNITS = { mora: 'モーラ', syllable: '音節' } as const;

export const mouth: Texts<MouthMessages> = {
  'mouth-and-timeline': {
    title: 'タイムラインのあるセルに口パク',
    explanation:
      '`mouth` の行は、話者のセリフからそのセルのタイムラインを作ります。別のタイムラインとは一緒に使えません。どちらかを消すか、口を別のセルにしてください。',
    message: ({ level }) => `セル${level}にはもうタイムラインがあるので、口にはできません。`,
  },
  'mouth-drawings': {
    title: '口の絵の過不足',
    explanation:
      '口の絵は、閉じ口、中開き、開き口の3枚（`1 2 3`）です。または、閉じ口と母音ごとの絵（`1 a 2 i 3 u 4 e 5 o 6`）です。1枚の絵を何回使ってもかまいません。',
    message: {
      three: ({ level, count }) =>
        `セル${level}の口の絵は${count}枚です。閉じ口、中開き、開き口の3枚が必要です。`,
      'no-vowel': ({ level, key }) => `セル${level}の口の絵 ${key} の前に、母音（a、i、u、e、o）が必要です。`,
      twice: ({ level, vowel }) => `セル${level}の口に、\`${vowel}\` の絵が2枚あります。`,
      missing: ({ level, vowels }) =>
        `セル${level}の口に、${vowels.map((vowel) => `\`${vowel}\``).join('、')} の絵がありません。`,
    },
  },
  'mouth-vowel': {
    title: '母音でない口',
    explanation:
      '口の絵の前には、最初の絵を除いて、その口の母音を書きます。a、i、u、e、o（または あ、い、う、え、お）です。',
    message: ({ name, guess }) =>
      `\`${name}\` は母音ではありません${meant(guess, '。口の母音は a、i、u、e、o です。')}`,
  },
  'lead-range': {
    title: '先行しすぎる口',
    explanation:
      '音が聞こえる時に口が開いているように、口は音より1、2コマ先行させます。半秒を超えるのは書き間違いです。',
    message: ({ most }) => `口を音より先行させられるのは${most}コマまでです。`,
  },
  'mouth-silent': {
    title: '話さない人の口',
    explanation:
      '口は話者の `voice` の行に合わせますが、このカットには、画面内で話すその人のセリフがありません。口は閉じたままになります。名前は両方の行で同じに書いてください。',
    message: {
      unseen: ({ speaker }) => `「${speaker}」のセリフは OFF かモノローグだけなので、口は閉じたままです。`,
      'no-lines': ({ speaker, guess, speakers }) =>
        `このカットに「${speaker}」のセリフはありません${
          guess !== null
            ? meant(guess)
            : speakers.length === 0
              ? '。セリフが1つもありません。'
              : `。話者は${speakers.map((one) => `「${one}」`).join('')}です。`
        }`,
    },
  },
  'mouth-unread': {
    title: '読み方の分からないセリフの口パク',
    explanation:
      '口は言葉の音から作りますが、読み方の決まらない言葉があります。`"行《い》く"` のように、後に読みを書いてください。それまではパクパクになります（セリフの間、口の絵を均等に混ぜます）。`mouth` の行に `flaps` と書けば、それでよいことになり、何も出ません。',
    message: ({ level }) =>
      `このセリフに読み方の分からない言葉があるので、セル${level}の口はパクパクになります。\`行《い》く\` のように読みを書いてください。`,
  },
  'line-too-fast': {
    title: '話しきれない速さのセリフ',
    explanation:
      '日本語は1秒に6モーラほど、英語は5音節ほど話します。9モーラ、7音節を超えると聞き取れません。行を増やすか、言葉を減らしてください。行に結んだ言葉、歌（♪）、感動詞では出ません。',
    message: ({ unit, count, time, rate, most, wanted }) =>
      `${time} に${count}${UNITS[unit]}は、1秒に${figure(rate, { decimals: 1 })}${UNITS[unit]}です。話せるのは${most}${UNITS[unit]}までです。このセリフには ${wanted} ほど必要です。`,
  },
};
