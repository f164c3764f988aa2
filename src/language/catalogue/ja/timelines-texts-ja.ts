import { share } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { TimelineMessages } from '../timelines-codes.js';
import { meant, noKeyAfter, noKeyBefore, sheetRows } from './terms-texts-ja.js';

export const timelines: Texts<TimelineMessages> = {
  'timeline-short': {
    title: '尺より短いタイムライン',
    explanation:
      'どのセルも、最後のコマまで何を見せるかを書きます。止メか空セルか、誰も迷わないようにするためです。最後の絵を止メるなら `..`、そこから空セルなら `x..` を足してください。',
    message: ({ level, shown, time, rows }, _, row) =>
      shown === 0
        ? `セル${level}は${sheetRows(time, rows)}の間、何も出ません。絵を書くか、空セルなら \`x..\` と書いてください。`
        : `セル${level}は${sheetRows(time, rows)}のうち${shown}コマ分です。${row(shown + 1)}から${rows - shown}コマ足りません。`,
  },
  'timeline-long': {
    title: '尺より長いタイムライン',
    explanation:
      'シートの行数より多くのコマがあります。止メを短くするか、絵を減らすか、`time` で尺を延ばしてください。',
    message: ({ level, shown, time, rows }) =>
      shown === null
        ? `セル${level}は、ここから先が尺をはるかに越えます。シートは${sheetRows(time, rows)}です。`
        : `セル${level}は${shown}コマありますが、シートは${sheetRows(time, rows)}です。ここから${shown - rows}コマ余ります。`,
  },
  'key-after-group': {
    title: 'グループのすぐ後ろや括弧の中の数字',
    explanation:
      '繰り返す回数は `(1-2-)*3` のように星印で、コマ数は `1:12` のようにコロンで書きます。どちらもない数字は原画の番号です。そのつもりなら、前後に空白を入れてください。',
    message: {
      times: ({ key }) => `原画${key}を見せる書き方です。${key}回繰り返すなら \`*${key}\` と書きます。`,
      length: ({ key }) => `原画${key}を見せる書き方です。${key}コマなら \`:${key}\` と書きます。`,
    },
  },
  'at-backwards': {
    title: '前に戻る `@`',
    explanation:
      '`@` は次の絵が始まる行です。前に書いたものは、それまでに始まっていて、それより長くは出せません。',
    message: {
      unseen: ({ frame, seen }, _, row) =>
        `次の絵は${row(frame)}から始まりますが、その前の絵が出るのは${row(seen)}です。`,
      exposed: ({ frame, until }, _, row) =>
        `次の絵は${row(frame)}から始まりますが、その前の絵は${row(until)}まで出ています。`,
    },
  },
  'at-gap': {
    title: '次の `@` までの空き',
    explanation:
      '`@` の前の絵に長さが書いてあり、早く終わりすぎます。長さを消すと `@` まで止メになります。または、間に何を見せるかを書いてください。',
    message: ({ last, frame }, _, row) =>
      `前の絵は${row(last)}で終わり、${row(frame)}までの${frame - 1 - last}コマに何も書かれていません。`,
  },
  'at-nothing': {
    title: '後に何もない `@`',
    explanation: '`@` は次の絵が始まる行なので、後に絵が続きます。',
    message: () => 'この `@` の後に何もありません。そこから何を見せるかを書いてください。',
  },
  'at-past-end': {
    title: '尻を越える `@`',
    explanation:
      'シートにその行はありません。カットを短くしたなら、そこにあったものは消すか、前に動かしてください。',
    message: ({ frame, time, rows }, _, row) =>
      `${row(frame)}はシートの最後を越えます。シートは${sheetRows(time, rows)}です。`,
  },
  'at-in-group': {
    title: 'グループやフレーズの中の `@`',
    explanation:
      'グループやフレーズの中身は、いろいろな所で何回も出ます。`@` はシートの1つの行なので、外に書きます。',
    message: () => '`@` はシートの1つの行を指すので、グループやフレーズの中には書けません。',
  },
  'direct-misplaced': {
    title: '原画2枚の間にない `direct`',
    explanation:
      '`1 direct 2` は、原画1の次がすぐ原画2で、中割りがないこと（中なし）を示します。別々の原画2枚の間に書き、その間には何も描きません。',
    message: () => '`direct` は `1 direct 2` のように、別々の原画2枚の間に書きます。',
  },
  'after-open': {
    title: '`..` の後に書かれたもの',
    explanation:
      '`..` は次の `@` かカットの最後まで続きます。後に書いたものは、`@` で始まる行を示さないと始まりません。',
    message: () => '`..` の後に書けるのは、いつまで続くかを示す `@` だけです。',
  },
  'open-in-group': {
    title: 'リピートの中の `..`',
    explanation:
      '`..` で終わるグループは2回目に進めません。最後の絵に長さを付けるか、グループ自体を `..` でリピートしてください。',
    message: () =>
      'リピートの中身が `..` で終わり、最後まで続いてしまいます。代わりに、最後の絵に長さを付けてください。',
  },
  'length-and-open': {
    title: '1つの絵に長さと `..`',
    explanation: '長さはいつ終わるか、`..` は続くことを示します。どちらか一方にしてください。',
    message: () => '長さと `..` は両立しません。どちらかにしてください。',
  },
  'length-zero': {
    title: '0コマの絵',
    explanation: '一番短い露出は1コマです。見せないなら消し、空セルにするなら `x` と書きます。',
    message: () => '0コマは出せません。1コマ以上にしてください。',
  },
  'repeat-zero': {
    title: '0回のリピート',
    explanation: 'グループは1回以上出します。いらないなら消してください。',
    message: () => '0回では何も出ません。消すか、回数を書いてください。',
  },
  'group-empty': {
    title: '絵のないグループ',
    explanation:
      'グループの中に絵がなく、`on` だけがあります。`on` はそのグループの中だけで効きます。外に出すか、絵を書いてください。',
    message: ({ phrase }) =>
      phrase === null ? 'このグループには絵がありません。' : `フレーズ \`${phrase}\` には絵がありません。`,
  },
  'too-deep': {
    title: '深すぎる入れ子',
    explanation: 'グループとフレーズの入れ子は50段までです。それ以上は読めません。',
    message: ({ most }) => `グループとフレーズの入れ子が${most}段を超えています。入れ子を減らしてください。`,
  },
  'between-from': {
    title: '前に原画のない中割り',
    explanation:
      '中割りは原画と原画の間です。この前には原画がないか、空セルか、グループが中割りで終わるか途中で切れているので、どの原画からか決まりません。',
    message: ({ why }) => `この中割りがどの原画からか決まりません。${noKeyBefore[why]}。`,
  },
  'between-to': {
    title: '後に原画のない中割り',
    explanation:
      '中割りは原画と原画の間です。この後には原画がないか、先に空セルになります。行き先の原画を書いてください。',
    message: ({ why }) => `この中割りの行き先の原画がありません。${noKeyAfter[why]}。`,
  },
  'group-begins-between': {
    title: '中割りで始まるグループ',
    explanation:
      '2回目には、頭の中割りが1回目と別の原画から始まってしまいます。グループは原画で始めてください。最後の原画の後に中割りを書くと、最初の原画に戻ります。',
    message: () =>
      'グループは中割りで始められません。行き先の原画で始めるか、中割りをグループの前に出してください。',
  },
  'bounce-ends': {
    title: '端が原画でない往復',
    explanation: '`<>` は最後の絵と最初の絵で折り返すので、どちらも原画にします。',
    message: () => '往復は原画で始まり、原画で終わります。そこで折り返すためです。',
  },
  'two-counts': {
    title: '同じ原画間で中割りの枚数が違う',
    explanation:
      '同じ原画間で枚数も同じなら、どこに出ても同じ絵です。枚数が違えば別の絵になり、新しく描いて、枚数に数えます。同じ絵のつもりなら、枚数を合わせてください。',
    message: ({ from, to, here, before }) =>
      `原画${from}→${to} の中割りが、ここでは${here}枚、前は${before}枚です。別の絵になります。`,
  },
  'way-back': {
    title: '戻りが新しい絵になる',
    explanation:
      '`1--2` の後の `2--1` は別の絵です。髪や服のなびきなら、それで正しいことがあります。同じ絵を逆に使うなら、`1.2 1.1` と書くか、`(1--2)<>` で往復にします。',
    message: ({ level, from, to, count, names }) =>
      `セル${level}の原画${from}→${to} の戻りは新しい絵${count}枚になります。\`<>\` か ${names.slice(0, 4).join(' ')} と書けば、前の絵を逆に使えます。`,
  },
  'reference-missing': {
    title: '存在しない絵',
    explanation:
      '`1.2` は、原画1の後の2枚目の中割りをもう一度出します。その絵がタイムラインか `cels` の行に必要です。',
    message: ({ level, drawing, key, to, way, count }) => {
      const why =
        count === 0
          ? `原画${key}から${to === null ? '' : `原画${to}へ`}の中割りがありません`
          : `原画${key}→${way} の中割りは${count}枚です`;
      return `セル${level}に絵 ${drawing} はありません。${why}。`;
    },
  },
  'reference-ambiguous': {
    title: 'どの原画間か決まらない絵',
    explanation:
      '原画1からいくつもの原画へ行くとき、`1.2` ではどの道か決まりません。`1>3.2`（1から3への2枚目）のように書きます。',
    message: ({ level, drawing, key, keys }) => {
      const listed = keys.length > 5 ? `${keys.slice(0, 5).join('、')} …` : keys.join('、');
      return `セル${level}の原画${key}は複数の原画（${listed}）へ行くので、${drawing} がどれか決まりません。`;
    },
  },
  'unknown-chart': {
    title: '存在しないツメ',
    explanation:
      'ツメは `even`（均等）、`early`（先ヅメ）、`late`（後ヅメ）、`both`（両ヅメ）、または分数で書きます。',
    message: ({ name, guess }) =>
      `\`${name}\` というツメはありません${meant(guess, '。`even`、`early`、`late`、`both`、または分数で書きます。')}`,
  },
  'chart-count': {
    title: '中割りと数の合わない分数',
    explanation: '分数で書くツメは、中割り1枚に1つずつです。',
    message: ({ fractions, inbetweens, from, to }) =>
      `原画${from}→${to} の中割りは${inbetweens}枚ですが、ツメの分数は${fractions}個です。`,
  },
  'chart-not-rising': {
    title: '順番が逆の分数',
    explanation: 'ツメの分数はだんだん大きくなります。後の中割りほど、先の原画に近くなるためです。',
    message: () => 'ツメの分数は、初めの原画から次の原画へ、だんだん大きくします。',
  },
  'chart-outside': {
    title: '範囲の外の分数',
    explanation: '0 が初めの原画、1 が次の原画です。中割りはその間です。',
    message: () => 'ツメの分数は、初めの原画（0）と次の原画（1）の間にします。',
  },
  'chart-narrow': {
    title: 'ほとんど描けない狭いツメ',
    explanation:
      '2枚の間隔が全体の1/16より狭くなっています。紙の上では線の太さより狭いことがあります。中割りを減らすか、分数でツメを書いてください。',
    message: ({ from, to }) => `原画${from}→${to} のツメに、1/16より狭い間隔があります。ほとんど描けません。`,
  },
  'chart-drawn': {
    title: '描いてある絵を動かすツメ',
    explanation:
      'この絵は別の割りで描かれています。番号を確定した時の枚数か、兼用元のカットに合わせたものです。新しい番号で描き直すか（`number --gone` と `--new`）、ツメを今の位置に合わせてください。その時の中割り1枚に1つずつの分数を書けば、その時の割りになります。後から足した中割りは、隣同士の真ん中になります。',
    message: ({ level, from, to, moved }) => {
      const places = moved.map(({ cel, name, was }) => `${level}${cel}（${name}）が ${share(was)}`);
      return `原画${from}→${to} の間は ${places.join('、')} で描いてありますが、このツメでは ${moved.map(({ is }) => share(is)).join('、')} です。`;
    },
  },
  'chart-twice': {
    title: '同じ原画間にツメが2つ',
    explanation:
      '同じ原画間で枚数も同じなら、どこに出ても同じ絵なので、ツメも1つです。片方を消してください。もう一度書く必要はありません。',
    message: ({ from, to }) => `原画${from}→${to} には、もう別のツメがあります。`,
  },
  'chart-unused': {
    title: '効かないツメ',
    explanation: 'ツメは、その原画に続く中割りのものです。ここでは次が中割りではありません。',
    message: ({ key, level }) =>
      `ここでは原画${key}の後に中割りがないので、セル${level}のこのツメは効きません。`,
  },
  'cels-count': {
    title: '確定した番号と中割りの枚数が違う',
    explanation:
      '`cels` の行には、紙にある中割りが書いてあります。タイムラインの枚数はそれと違います。新しい中割りは位置で名付けて行の最後に足します（`1.1a` は 1.1 の後、`1.0a` は 1.1 の前）。なくした中割りの所には `_` を残します。',
    message: ({ from, to, shown, pinned }) =>
      `原画${from}→${to} の中割りは、ここでは${shown}枚、描いてあるのは${pinned.length}枚（${pinned.join(' ')}）です。`,
  },
  'cels-ambiguous': {
    title: 'どの原画間か決まらない確定番号',
    explanation:
      '原画1からいくつもの原画へ行くとき、`1.1` は行の中で後に来る原画への中割りです。ここではその原画がないので、どの道か決まりません。`1>2.1`（1から2への1枚目）のように書きます。',
    message: ({ key, keys }) =>
      `原画${key}は複数の原画（${keys.join('、')}）へ行きます。中割りは行き先の原画を付けて書いてください。`,
  },
  'cels-passage': {
    title: '別の道の絵かもしれない確定番号',
    explanation:
      '`cels` の行は初めて出た順なので、中割りは行き先の原画の前に並びます。ここでは、今の行き先とは違う原画の前にあります。リピートならそれで正しいです。タイミングを直して原画を抜いたのなら、前の道の絵かもしれず、今の道の絵はまだ紙にありません。どちらかを書いてください。`2>1.1` は、2から1への1枚目です。',
    message: ({ key, to, drawing, next }) =>
      `原画${key}は原画${to}へ行きますが、この行では ${drawing} が原画${next}の前にあります。紙にあるのは${to}への中割りですか？`,
  },
  'reuse-number': {
    title: '兼用元と違う確定番号',
    explanation:
      'このセルはほかのカットの絵を兼用していて、番号はもう紙にあります。`cels` の行は、その続きだけを書けます。',
    message: {
      number: ({ drawing, number, level, cut, pinned }) =>
        `絵 ${drawing} は、カット${cut}のセル${level}では${number}番です。${pinned}番ではありません。`,
      drawing: ({ pinned, level, cut, there, drawing }) =>
        `カット${cut}のセル${level}の${pinned}番は絵 ${there} です。${drawing} ではありません。`,
    },
  },
  'reuse-count': {
    title: '兼用元と中割りの枚数が違う',
    explanation:
      '同じ原画間でも枚数が違えば別の絵なので、兼用できません。枚数を合わせるか、新しく描くことを了承（`accept`）してください。',
    message: ({ from, to, level, cut, there, here }) =>
      `カット${cut}のセル${level}では原画${from}→${to} の中割りは${there}枚です。ここの${here}枚は新しく描くことになります。`,
  },
  'level-empty': {
    title: 'ずっと空のセル',
    explanation: 'タイムラインでは全コマ空セルです。いらないなら、タイムラインを消してください。',
    message: ({ level }) => `セル${level}は、全部空セルです。`,
  },
  'drawing-never-seen': {
    title: '出る前にカットが終わる原画',
    explanation:
      'この原画が出る前に、カットかリピートが終わります。描いても使われません。カットを短くしたか、前の止メが長すぎるのかもしれません。',
    message: ({ level, keys }) =>
      `セル${level}の原画${keys.slice(0, 10).join('、')}${keys.length > 10 ? ' …' : ''}は、カットの終わりまでに出ません。`,
  },
  'one-frame-flash': {
    title: '止メの間の1コマ',
    explanation:
      '止メと止メの間に1コマだけ出る絵や空セルは、画面ではミスに見えます。わざとなら、前に `on 1` と書いてください。',
    message: ({ level, drawing, frame }, _, row) =>
      `セル${level}は、止メと止メの間の${row(frame)}の1コマだけ${drawing === null ? '空セルです' : `絵 ${drawing} が出ます`}。`,
  },
  'key-jump': {
    title: '抜けた原画番号',
    explanation:
      '原画は描く順に番号を付けます。ここで番号が抜けています。原画を忘れたか、タイミングの直しで抜いたのかもしれません。紙にあるなら、`cels` の行に書きます。',
    message: ({ key, level, after, first, last }) =>
      `セル${level}の原画${after}の次が原画${key}です。原画${first === last ? first : `${first}～${last}`}がありません。`,
  },
  'key-zero': {
    title: '番号が 0 の原画',
    explanation:
      '原画の番号は 1 からです。空セルは `x` と書きます。`x:12` なら12コマの間、何も出ません。`0:12` は 0 という名前の絵になり、枚数に入って印刷されます。本当にある絵なら、`cels` の行に番号を書きます。',
    message: ({ level }) => `セル${level}に番号が 0 の絵があります。空セルは \`x\` と書きます。`,
  },
  'key-backwards': {
    title: '順番が逆の原画番号',
    explanation:
      '番号の大きい原画の後に、初めて出る原画があります。入れ替わったのかもしれません。後から足した原画には英字を付けます。3a は 3 と 4 の間です。',
    message: ({ key, level, frame, after }, _, row) =>
      `セル${level}の原画${key}が、原画${after}より後の${row(frame)}に初めて出ます。`,
  },
};
