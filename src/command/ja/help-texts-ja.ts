import type { HelpTexts } from '../help-language.js';

/** Of everything that `--help` shows, by the English. What several lines of help say as one paragraph is one text. */
export const help: HelpTexts = {
  titles: {
    'Usage:': '使い方：',
    'Arguments:': '引数：',
    'Options:': 'オプション：',
    'Examples:': '例：',
    'Marks:': '記号：',
  },
  ofDefault: (value) => `（省略時：${value}）`,
  ofWords: (text, words) => `${text}：${words.join('、')}`,
  program: (commands) => `cutwright は、カットのテキストからタイムシートを作って印刷します。

  cutwright check c012.cut      誤りがないか調べる
  cutwright build c012.cut      印刷できる c012.pdf を作る

コマンド：
${commands}

どのコマンドにも、複数のファイル、フォルダー、episode.yaml を渡せます。- は標準入力です。
オプションと例は「cutwright コマンド --help」で出ます。
メッセージの言語は --language、CUTWRIGHT_LANGUAGE、システムの設定の順に決まります。用紙の言語は --labels です。
`,
  lines: {
    'this text': 'この説明',
    'how it is used, with examples': '使い方と例',
    'language of messages and help; --labels is that of the paper':
      'メッセージと説明の言語（用紙の言語は --labels）',

    // ---- what several commands take
    'cuts, folders or an episode.yaml; - is standard input': 'カット、フォルダー、episode.yaml。- は標準入力',
    'cuts, folders or an episode.yaml; - is standard input; none: the episode of this folder':
      'カット、フォルダー、episode.yaml。- は標準入力。なければ、このフォルダーの話数',
    'cuts, folders or an episode.yaml; none: the episode of this folder':
      'カット、フォルダー、episode.yaml。なければ、このフォルダーの話数',
    'how problems are shown on standard error': '誤りを標準エラー出力に出す形式',
    'count warnings as errors': '注意も誤りとして数える',
    'whose form of sheet': 'シートの形式',
    'language of the printed form': '印刷する用紙の言語',
    'paper to print on; B4 and B5 are the JIS sizes, C4 and kaku2 envelopes':
      '印刷する用紙（B4、B5 は JIS、C4、kaku2 は封筒。kaku2 は角2）',
    'rows a page: whole seconds in Japan, whole feet in the west':
      '1枚の行数。日本式は秒、欧米式はフィートの倍数',
    'how lengths on charts are printed': 'カメラ図の長さの単位',
    'print one part': '一部だけ印刷する',
    'print the scale strip and the field overlay as well': '原寸の目盛りとフレームも印刷する',
    'the file to write, or - for standard output': '書くファイル。- は標準出力',
    'from standard input': '標準入力から',
    'from standard input to standard output': '標準入力から標準出力へ',

    // ---- check
    'Say what is wrong with cuts.': 'カットの誤りを調べます。',
    'one cut': '1つのカット',
    'first write the mends that cannot change the meaning': '意味の変わらない直しを先に書き込む',
    'how many threads share the cuts; otherwise as many as are worth it on this machine':
      'カットを分担するスレッドの数。なければ、このマシンに見合うだけ使う',
    'write nothing; show what --fix would change': '書かずに、--fix で変わる所を示す',
    'words of the trade, blanks in numbers: mended in the files':
      '現場の言葉や数値の中の空白をファイルの中で直す',
    'every cut of a folder': 'フォルダーの全カット',
    'a whole episode; warnings count as errors': '話数全体。注意も誤りとして数える',
    'as annotations on the lines of a pull request': 'プルリクエストの行に注釈を付ける',
    'what the code of a message means': 'メッセージのコードの意味',

    // ---- build
    'Print cuts, or a whole episode, to PDF.': 'カットや話数全体を PDF に印刷します。',
    'a file, a folder, or - for standard output; otherwise beside the cut':
      'ファイルかフォルダー。- は標準出力。なければカットと同じ所',
    'all cuts in one PDF with bookmarks, beside the manifest or where --output says':
      '全カットをしおり付きの1つの PDF にする。episode.yaml と同じ所か --output に書く',
    'covers of so many cuts on a page, in one PDF, to cut apart':
      '切り分けるカット袋の表書きを、1ページに何カット分並べるか。1つの PDF にする',
    'what to print of a cut: what somebody works from (needed), or all':
      'カットの何を印刷するか。作業に使うもの（needed）か、全部',
    'print the scale strip and the field overlay as well, to lay on the drawing':
      '作画に重ねる原寸の目盛りとフレームも印刷する',
    'print only cuts that have changed on paper since the last build; say which pages':
      '前回の build から紙が変わったカットだけを印刷し、どのページか示す',
    'the same, compared with a git revision such as HEAD~1': '同じ。ただし HEAD~1 などの git の版と比べる',
    'mark on the sheets what has changed since a git revision': 'git の版からの変更をシートに印す',
    'print these pages only, such as 2-3; "changed": those that --changed or --since finds':
      '2-3 などのページだけを印刷する。changed は --changed や --since で見つかったページ',
    'print one part of the cuts, such as 2/8: each cut is in one of the eight':
      '2/8 など、カットを分けた1つだけを印刷する。どのカットも8つのどれか1つに入る',
    'print nothing; write a build file with a rule for each cut, for this program':
      '印刷せず、カットごとの規則を書いたビルドファイルを、このプログラム用に作る',
    'writes c012.pdf': 'c012.pdf を書く',
    'every cut of the episode that this folder lies in': 'このフォルダーの話数の全カット',
    'the same, into a folder': '同じものを、フォルダーに書く',
    'the episode as one file for the printer': '話数を1つのファイルにして印刷に回す',
    'only what has changed since the last build': '前回の build から変わったものだけ',
    'only what prints otherwise than at that revision': 'その版と印刷が変わるものだけ',
    'the pages to exchange in the binders': 'ファイルで差し替えるページ',
    'bars beside rows that differ, a list in the memo': '変わった行に太線、メモに一覧',
    'on A3, with a Japanese form': 'A3 に、日本語の用紙で',
    'only these pages': 'このページだけ',
    'the graduations of its moves at true size': '動きの目盛りを原寸で',
    'the same as labels, four on a page': '同じものをラベルとして、1ページに4つ',
    'an eighth of the cuts, on the second of eight machines': '8台のうち2台目で、カットの8分の1を',
    'writes out/cutwright.ninja, for `ninja -f out/cutwright.ninja`':
      '`ninja -f out/cutwright.ninja` で使う out/cutwright.ninja を書く',
    'A cut has changed where its paper would come out otherwise. Comments, spelling, the clock and the stamp at the foot do not count. Each PDF holds a record of what was printed: one that is missing, damaged or of another program is printed anew. Files of cuts that are gone are named, and never deleted.':
      '印刷が変わるカットを、変更とみなします。コメント、書き方、時刻、欄外の表示は数えません。PDF には何を印刷したかの記録が入ります。ないもの、壊れたもの、別のプログラムのものは印刷し直します。なくなったカットのファイルは名前を示すだけで、消しません。',
    'A build file (--plan) stands in the folder of --output, or in this one, and is used from here. It knows what each print hangs on, and is made anew when a text changes. It calls cutwright, or what the variable CUTWRIGHT says.':
      'ビルドファイル（--plan）は --output のフォルダーかこのフォルダーに作り、ここから使います。各カットが何に依存するかを書き、テキストが変わると作り直されます。呼び出すのは cutwright か、環境変数 CUTWRIGHT のプログラムです。',

    // ---- export
    'Give cuts as JSON or CSV, an episode as an edit.':
      'カットを JSON や CSV に、話数を編集データ（EDL など）に書き出します。',
    'a file or a folder; otherwise standard output': 'ファイルかフォルダー。なければ標準出力',
    'a table as CSV instead of JSON': 'JSON の代わりに CSV の表',
    'placements also in pixels of the finished picture, from its centre, y up':
      '位置を完成画面のピクセルでも出す（中心から、y は上）',
    'the edit of an episode, OpenTimelineIO or an edit decision list':
      '話数の編集。OpenTimelineIO か編集リスト（EDL）',
    'where the record of the edit begins, as 01:00:00:00': '編集の頭のタイムコード（01:00:00:00 など）',
    'the whole cut as JSON': 'カット全体を JSON で',
    'one row a level and frame, as CSV': '1セル1コマを1行にした CSV',
    'all drawings of an episode in one table': '話数の全部の絵を1つの表に',
    'the sheet for a spreadsheet or a script, one row a frame': '表計算やスクリプト用のシート。1コマ1行',
    'a JSON file for each cut': 'カットごとに JSON ファイル1つ',
    'the edit: one clip a cut, overlaps': '編集。1カット1クリップ、O.L 付き',
    'the edit as an edit decision list': '編集リスト（EDL）で',

    // ---- format
    'Put cuts into the usual layout.': 'カットの書き方を整えます。',
    'write nothing; list the files that would change, and leave with 1 if there are any':
      '書かずに、変わるファイルを示す。あれば終了コード 1',
    'write nothing; show what would change': '書かずに、変わる所を示す',
    'Timelines that stand together start in one column, lines over 100 columns are broken, full-width characters outside quotes become plain ones. Line breaks before a drawing stay. What is printed stays the same. What cannot be read is left as it is; "cutwright check" says why.':
      '続くタイムラインの頭をそろえ、100桁を超える行を折り、引用符の外の全角文字を半角にします。絵の前の改行は残します。印刷は変わりません。読めない所はそのままです。理由は cutwright check で分かります。',
    'write it in the usual layout': '整えて書く',
    'every text of a folder, what cuts use and old takes as well':
      'フォルダーの全テキスト。読み込むファイルも古いテイクも',
    'before a commit': 'コミットの前に',
    'look first': '先に見る',
    'from standard input to standard output, for an editor': '標準入力から標準出力へ。エディター用',

    // ---- shoot
    'See cuts move: a film, or pictures.': 'カットの動きを確認します。動画ファイルか画像を作ります。',
    'a cut, or several or an episode.yaml for one film with its overlaps; - is standard input':
      'カット。複数か episode.yaml なら、O.L も入れた1本にする。- は標準入力',
    'a film (.mp4, .mov, .mkv, .webm), a folder for pictures, or their names, such as frames/%04d.png':
      '動画ファイル（.mp4、.mov、.mkv、.webm）、画像のフォルダー、または frames/%04d.png などの画像の名前',
    'size of the picture, such as 960x540; otherwise that of the episode':
      '画面の大きさ（960x540 など）。なければ話数のもの',
    "the first frame: 37, 1+12 (seconds + frames) or 2'08 (feet)":
      "最初のコマ。37、1+12（秒+コマ）、2'08（フィート）",
    'the last frame': '最後のコマ',
    'field chart and safe areas over the picture': '画面にフィールドチャートと安全フレームを重ねる',
    'no cut and time at the foot of the picture': '画面の下にカット番号と尺を出さない',
    'language of the words at the foot': '画面の下の言葉の言語',
    'c012.mp4, with the sound of its track': 'c012.mp4。録音の音付き',
    'small pictures, one a frame': '小さい画像を1コマ1枚',
    'the second second of it': '2秒目だけ',
    'the whole episode, with its overlaps': '話数全体。O.L も入れる',
    'A film needs ffmpeg, a program of its own; without it there are the pictures. What is not drawn yet is a sheet with its number.':
      '動画ファイルには別のプログラムの ffmpeg が必要です。なければ画像を書きます。まだ描いていない絵は、番号の紙で出ます。',

    // ---- number
    'Pin the numbers of drawings that exist.': '描いた絵の番号を確定します。',
    'only these levels, such as A,B': 'A,B などのセルだけ',
    'an in-between put in where the paper exists, such as A:1.1a': '後から足した中割り（A:1.1a など）',
    'an in-between taken out there, such as A:1.2': 'なくした中割り（A:1.2 など）',
    'write nothing; leave with 1 where a drawing has no pinned number':
      '書かずに、番号の確定していない絵があれば終了コード 1',
    'Once the drawings exist, their numbers must not move: this writes a `cels` line for each level, or adds new drawings at the end of the one that is there. Everything else in the file stays as it is.':
      '描いた絵の番号は変えられません。セルごとに `cels` の行を書くか、今ある行の最後に新しい絵を足します。ファイルのほかの所は変わりません。',
    'pin the numbers of its levels': '全部のセルの番号を確定する',
    'only those of level A': 'セルAだけ',
    'after a retime: the one after 1.1 is new': 'タイミングを直した後で、1.1 の次を足した',
    '2.1 is taken out; its number is not used any more': '2.1 をなくした。番号は欠番になる',
    'has every drawing its number?': '全部の絵に番号があるか？',

    // ---- listen
    'Find in the recording when each word is spoken.': '録音から、言葉がいつ話されるかを探します。',
    'write rows and ties into the text': '行と言葉の位置をテキストに書く',
    'find words anew that are tied to a row already': 'もう行に結んである言葉も探し直す',
    'find where somebody speaks, whatever is written, and propose ranges':
      '書いてあることに関係なく、話している所を探して範囲の候補を出す',
    'what was heard as JSON on standard output': '聞いた結果を JSON で標準出力に出す',
    'Reads the recording that the `track` statement of a cut names, finds the lines of its `voice` statements in it, and on which row each word (in Japanese each phrase between blanks) begins. It prints the statements as they would be; --write puts them into the text, and nothing else of it changes. Ties that are typed already stay, and help to find the others. What it is not sure of it says. English is read by a dictionary, Japanese by its kana; kanji need ruby: "海《うみ》へ行《い》く".':
      'カットの `track` の録音を読み、`voice` のセリフと、言葉（日本語では空白で区切った文節）が始まる行を探します。書いた場合の行を表示し、--write でテキストに書きます。ほかは変わりません。もう結んである言葉は残し、ほかを探す手がかりにします。自信のない所は、そう示します。英語は辞書で、日本語はかなで読みます。漢字にはルビが必要です："海《うみ》へ行《い》く"。',
    'print what would be written': '書く内容を表示する',
    'write it': '書く',
    'after a new take: show every word anew': '録り直しの後で、全部の言葉を探し直して表示する',
    'ranges in which somebody speaks': '話している範囲',
    'rows of every syllable, for other programs': '音節ごとの行。ほかのプログラム用',

    'the front of each envelope': 'カット袋の表書き',

    // ---- list
    'List the cuts of an episode: times, drawings, artists.':
      '話数のカット表を作ります。尺、枚数、担当が出ます。',
    'an episode.yaml, a folder or cuts; otherwise the episode that this folder lies in':
      'episode.yaml、フォルダー、カット。なければ、このフォルダーの話数',
    'a file: .pdf prints the list, .csv and .json write it; - is standard output':
      'ファイル。.pdf は印刷、.csv と .json はデータ。- は標準出力',
    'as CSV, a row a cut': 'CSV で。1カット1行',
    'as JSON, with totals and artists': 'JSON で。合計と担当も',
    'print one part: the list of cuts, or the episode as a picture': 'カット表かリズム表の一方だけを印刷する',
    'what has become of the cuts since then: times, drawings, budget':
      'その時からカットがどう変わったか。尺、枚数、定尺',
    'an error when the cuts run longer than the budget; prints no table':
      '総尺が定尺を超えたら誤りにする。表は出さない',
    'the cuts of the episode that this folder lies in, as a table': 'このフォルダーの話数のカット表',
    'the list and the picture of the whole episode, to print': 'カット表とリズム表。印刷用',
    'the picture alone, on A3': 'リズム表だけを A3 に',
    'for a spreadsheet': '表計算用',
    'what the retimes since the tag v2 do to the running time and the budget':
      'タグ v2 からのタイミングの直しで、総尺と定尺がどうなったか',
    'for scripts: fails when it runs over its budget': 'スクリプト用。定尺を超えたら失敗する',

    // ---- progress
    'Tell where every cut is in production, and write it down.':
      'どのカットがどの工程にあるかを示し、記録します。',
    'an episode.yaml or its folder, otherwise the episode that this folder lies in; then, to write a row, cuts such as 12 or 12,13A, a stage of the episode, and started, done or retake':
      'episode.yaml かそのフォルダー。なければ、このフォルダーの話数。行を書くなら、続けてカット（12、12,13A など）、話数の工程、started（開始）、done（完了）、retake（リテイク）のどれか',
    'who did it, in the row that is written': '書く行の作業者',
    'the day of the row, or the day for which the table holds; otherwise today':
      '書く行の日付、または表の日付。なければ今日',
    'a remark in the row, such as the reason of a retake': '書く行の備考。リテイクの理由など',
    'a file: .pdf prints the table, .csv and .json write it; - is standard output':
      'ファイル。.pdf は印刷、.csv と .json はデータ。- は標準出力',
    'as CSV, a row a cut and stage': 'CSV で。1カット1工程を1行',
    'as JSON, with the sums of stages and people': 'JSON で。工程と人ごとの合計も',
    'What has happened to each cut stands in progress.csv beside episode.yaml, a row each: cut, stage, state, date, person, note. The stages, the days by which they are due and what is paid for them are those of episode.yaml.':
      'カットの経過は、episode.yaml の隣の progress.csv に1行ずつ入ります。カット、工程、状態、日付、人、備考の順です。工程、締め切り、支払いは episode.yaml に書きます。',
    'where every cut is, what is late, what is to be paid': 'カットの現在の工程、遅れ、支払い',
    'writes a row with the day of today': '今日の日付の行を書く',
    'a row for each of two cuts, of another day': '2つのカットに1行ずつ。別の日付で',
    'sends cut 12 back to its keys': 'カット12を原画に戻す',
    'the table on paper': '表を紙に',
    'as it stood at the end of March, for a spreadsheet': '3月末の時点。表計算用',

    // ---- compare
    'Say what differs between two versions of a cut.': 'カットの2つの版の違いを文で示します。',
    'OLD and NEW: cuts, folders, an episode.yaml, or REVISION:PATH as git has it; - is standard input':
      '前の版と今の版。カット、フォルダー、episode.yaml、または git の 版:パス。- は標準入力',
    'compare what is named, or the whole episode, with what it was then':
      '指定したもの、または話数全体を、その版と比べる',
    'everything in numbers, as JSON': '全部を数値で。JSON',
    'language of the sentences; otherwise that of messages, on paper that of the episode':
      '違いの文の言語。なければメッセージの言語、印刷では話数の用紙の言語',
    'be called by git as its diff for cuts': 'git がカットの diff として呼び出す',
    'what a retake note of cut 12 must say': 'カット12のリテイクの指示に書くこと',
    'against what git has': 'git にある版と比べる',
    'folders, cut by cut, by their numbers': 'フォルダー同士を、カット番号ごとに',
    'the episode against a tag': '話数をタグの版と比べる',
    'one cut, in Japanese': '1つのカットを日本語で',
    'Leaves with 0 where nothing differs, 1 where something does, 2 where the two cannot be compared.':
      '終了コードは、違いがなければ 0、あれば 1、比べられなければ 2 です。',

    'print the retake note as a PDF: rows before and after, room to answer':
      'リテイクの指示を PDF に印刷する。前後の行と返事の欄付き',
    'who asks for the changes, printed on the note': '直しを頼む人。指示書に印刷する',
    'why, printed beside each change': '理由。変更ごとの横に印刷する',
    'paper of the printed note': '指示書の用紙',
    'a note for each cut on paper, with a summary': 'カットごとの指示書と、まとめの1枚',

    // ---- watch
    'Print cuts again whenever they are saved.': 'カットを保存するたびに印刷し直します。',
    'a file or a folder; otherwise beside the cut': 'ファイルかフォルダー。なければカットと同じ所',
    'show the pages in a browser as well; without a port, any that is free':
      'ブラウザーでもページを見せる。ポートがなければ、空いているものを使う',
    'writes c012.pdf now, and whenever c012.cut is saved':
      '今すぐと、c012.cut を保存するたびに c012.pdf を書く',
    'all cuts of a folder, into another one': 'フォルダーの全カットを別のフォルダーへ',
    'and says where a browser shows the pages': 'ブラウザーで見るアドレスも示す',
    'the same at a port of your own': '同じものを、決めたポートで',
    'A cut whose text is broken keeps the PDF that it has. A file that cuts share, and the manifest, print anew those cuts whose paper comes out otherwise, and no others. New cuts are taken in. One folder is written to by one watch at a time.':
      '誤りのあるカットの PDF は、前のままです。共有ファイルや episode.yaml を保存すると、印刷が変わるカットだけを印刷し直します。新しいカットも加わります。1つのフォルダーに書ける watch は1つだけです。',
    'The live view is for this machine only. Its address holds a word that nobody can guess; with it, an editor shows the rows of the item at the cursor: ADDRESS/at?file=c012.cut&line=7&column=4':
      'ブラウザーで見られるのは、このマシンだけです。アドレスには推測できない言葉が入ります。エディターからは、カーソルのある絵のコマを示せます：アドレス/at?file=c012.cut&line=7&column=4',

    // ---- blank
    'Print empty forms to write on by hand.': '手書き用の白紙のシートを印刷します。',
    'columns for levels, 1 to 26': 'セルの列の数。1 から 26',
    'how many copies of the form': '枚数',
    'the form of the episode that this folder belongs to': 'このフォルダーの話数の用紙',
    'a western form': '欧米式の用紙',
    'twenty copies with six levels': '6セルの用紙を20枚',

    // ---- show
    'Show the sheet in the terminal.': 'シートをターミナルに表示します。',
    'only every so many frames: what is seen on each of them': '何コマかおきに、その時に出ている絵',
    'only these levels, as A,B': 'A,B などのセルだけ',
    'how wide; otherwise as wide as the terminal, or 80': '幅（桁）。なければターミナルの幅か 80',
    'language of the words on the sheet': 'シートの言葉の言語',
    'read each cut as if it lay in this folder, with its episode':
      'カットがこのフォルダーの話数にあるものとして読む',
    'say what the marks mean': '記号の説明を出す',
    'the sheet, one row a frame': 'シート。1コマ1行',
    'a piece of it': 'その一部',
    'what level A shows on every second frame': 'セルAを1コマおきに',
    'a whole episode, four rows a second': '話数全体を1秒4行で',
    'see sheets in git log -p and git diff,': 'git log -p と git diff でシートを見る設定',
    'for all cuts': '（全カットに使う）',

    // The legend, line by line.
    '  (1)  key drawing 1; beside it, here and below, the finished number':
      '  (1)  原画1。隣（ここと下）の数字は動画番号',
    '   -   in-between      =  breakdown      o  in-between of a cycle, seen before':
      '   -   中割り          =  中割り参考     o  リピートの中割り。前に出たもの',
    '  1.2  in-between that does not stand in its turn, by its name':
      '  1.2  順番どおりでない中割り。名前で示す',
    '   │   held            ×  the level is empty from here on      [1]  held since before':
      '   │   止メ            ×  ここから空セル                       [1]  前からの止メ',
    '   ╮*3 a cycle begins, played three times (<> there and back, .. until further notice); ╯ it ends':
      '   ╮*3 リピート3回の始まり（<> 往復、.. は指定まで続く）。╯ 終わり',
    '   ┌   a line, a sound or a move begins; └ it ends; (A) the camera stands on A':
      '   ┌   セリフ、SE、動きの始まり。└ 終わり。(A) カメラは A にある',
    '  ██▌  how loud the recording is there': '  ██▌  録音の音の大きさ',
    '  ═══  the cut point: what lies beyond it is handle': '  ═══  カット点。その外はのりしろ',

    // ---- new
    'Begin an episode or a cut.': '話数かカットを新しく作ります。',
    'episode or cut': 'episode（話数）か cut（カット）',
    "the episode's folder (otherwise this one), or the cut's number":
      '話数のフォルダー（なければここ）、またはカット番号',
    'take stack, levels, fields, artist and scene from that cut of the episode':
      'そのカットから、セル重ね、セル、フレーム、担当、シーンを写す',
    'how long the cut is, such as 5+0; otherwise as the one it is like, or 3+0':
      'カットの尺（5+0 など）。なければ写したカットの尺か 3+0',
    'levels with drawings, bottom to top, such as A,B': '絵のあるセル。下から上へ（A,B など）',
    'title of the work, or of the cut': '作品名、またはカットの題',
    'who draws the cut': 'カットの担当',
    'make the cut of a table of exposures; - is standard input': 'コマ打ちの表からカットを作る。- は標準入力',
    'where the cut is written; - is standard output': 'カットを書く所。- は標準出力',
    'Nothing is ever written over: where one of the files is there already, none is written.':
      '上書きはしません。ファイルが1つでもあれば、何も書きません。',
    'a folder with a manifest, a house file and cut 1': 'episode.yaml、共有ファイル、カット1のあるフォルダー',
    'the next cut of this episode, one key a level': 'この話数の次のカット。1セルに原画1枚',
    "on cut 12's set-up, without its drawings": 'カット12の設定を写す。絵は写さない',
    'three levels, two seconds and a half': '3セル、2秒半',
    'from a table frame,A,B: holds and cycles are found': 'frame,A,B の表から。止メとリピートは自動',
    'each cut of an exported table': '書き出した表の全カット',

    // ---- completion
    'Let the shell complete commands and options.': 'シェルでコマンドやオプションを補完できるようにします。',
    'bash, zsh or fish': 'bash、zsh、fish のどれか',
    'Prints a script for the shell to read. Words, options and what they take are completed, and .cut files and folders.':
      'シェルに読ませるスクリプトを出します。言葉、オプションとその値、.cut ファイル、フォルダーを補完します。',
    'in ~/.bashrc': '~/.bashrc に書く',
    'in ~/.zshrc, after compinit': '~/.zshrc の compinit の後に書く',
    'in ~/.config/fish/config.fish': '~/.config/fish/config.fish に書く',

    // ---- explain
    'Say what a statement or a problem means.': '行の書き方やメッセージの意味を説明します。',
    'a statement, a word of one, or the code of a message; without it all are listed':
      '行の言葉、行の中の言葉、メッセージのコード。なければ一覧',
    'print the whole language on one page, to hang beside the desk': '言語全体を1枚に印刷する。机の横に貼る',
    'the file of the card, or - for standard output': '早見表のファイル。- は標準出力',
    'the paper of the card': '早見表の用紙',
    'the statement: how it is written, with examples': '行の書き方と例',
    'a word of the trade: what it is called here': '現場の言葉。ここでの書き方',
    'a word that stands inside statements': '行の中の言葉',
    'what a message means, with a failing and a mended example': 'メッセージの意味と、直す前後の例',
    'all statements and codes in a list': '全部の行とコードの一覧',
    'the whole language on one page': '言語全体を1枚に',

    // ---- lsp
    'Serve an editor: problems, completion, renaming as you type.':
      'エディターに、書きながらの誤り、補完、名前の変更を提供します。',
    'speak over standard input and output; there is no other way, so it need not be said':
      '標準入出力で話す。ほかの方法はないので、書かなくてよい',
    'An editor starts this, not a person: it speaks the Language Server Protocol. What it offers: problems as you type with their fixes, completion, what a drawing, time or move comes to, definitions and renaming across the cuts of an episode, layout, and the running frame behind each line of a timeline.':
      '人ではなくエディターが起動します（Language Server Protocol）。書きながらの誤りと直し方、補完、絵や時間や動きの中身、話数のカットをまたぐ定義と名前の変更、書き方の整形、タイムラインの行ごとのコマ数を出します。',
    'How to set up VS Code, Neovim, Helix and Emacs stands in grammar/editors.':
      'VS Code、Neovim、Helix、Emacs の設定は grammar/editors にあります。',
    'what an editor is to run for files that end in .cut': '.cut ファイルのためにエディターが起動するもの',
  },
};
