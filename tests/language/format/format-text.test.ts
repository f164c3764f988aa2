/** The one layout: how each kind of statement looks in it, what stays as it is, and that nothing changes its meaning. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format } from '../../../src/language/format/format-text.js';
import { parse } from '../../../src/language/parse.js';
import { displayWidth } from '../../../src/language/source.js';
import { statementTable } from '../../../src/language/statements/statement-table.js';
import { bare } from '../read-text.js';

const formatted = (text: string): string => format('this.cut', text).text;
const line = (text: string): string => formatted(`${text}\n`).trimEnd();

describe('statements', () => {
  test.each(statementTable.map(({ example }) => example))('%s is as it should be', (example) => {
    expect(line(example)).toBe(example);
  });

  test.each([
    ['cut   12"Rooftop, dusk"', 'cut 12 "Rooftop, dusk"'],
    ['A"Nao" :1:12 1 - - 2 - 3:1+0(4 - 5 -)*3 6..', 'A "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..'],
    ['A: 1 { late } - - 2 :6 {1/8  1/2 7/8}---3', 'A: 1{late}--2:6{1/8 1/2 7/8}---3'],
    ['A: 3x 4:8x:2(x:2 1)..', 'A: 3 x 4:8 x:2 (x:2 1)..'],
    ['A: 1@hit -2 @hit-2 1-2', 'A: 1 @hit -2 @hit-2 1-2'],
    ['A: on  3 -  1 = 2  1 > 3.2 :4 1.1a', 'A: on 3 -1=2 1>3.2:4 1.1a'],
    ['A: ( 1--2 ) <> * 2 walk * 3 walk.. @5 blink:8', 'A: (1--2)<>*2 walk*3 walk.. @5 blink:8'],
    ['A: ((1-2)(3-)*2 x)..', 'A: ((1-2) (3-)*2 x)..'],
    ['A: 1-:3  2=:1+0 3 -:2 (4-:8 5) =:3 x:2 -:4 1.1', 'A: 1-:3 2=:1+0 3-:2 (4-:8 5)=:3 x:2 -:4 1.1'],
    ['phrase   walk=1--2--', 'phrase walk = 1--2--'],
    ['cels A 1  1 > 2.1 _   2', 'cels A 1 1>2.1 _ 2'],
    ['stack  BG   A', 'stack BG A'],
    ['level BG at - 20 , 8 size 560x200mm free', 'level BG at -20,8 size 560x200mm free'],
    ['level C reuse 8 / C', 'level C reuse 8/C'],
    ['mark hit  2+6', 'mark hit 2+6'],
    ['voice"Nao"off 1+6 .. 2+20"Wait"@ 1+14"for"', 'voice "Nao" off 1+6..2+20 "Wait" @1+14 "for"'],
    ['mouth C"Nao"1   2 3 on  3  lead 2   flaps', 'mouth C "Nao" 1 2 3 on 3 lead 2 flaps'],
    ['mouth ア「ナオ」１ a　２ i 3 u 4 e 5 o 6', 'mouth ア 「ナオ」 1 a 2 i 3 u 4 e 5 o 6'],
    ['sound 1 ..   "wind"', 'sound 1.. "wind"'],
    ['sound hit+2 .. hit-3 "wind"', 'sound hit+2..hit-3 "wind"'],
    ['field C 8F at 2N   3E ccw 30deg', 'field C 8F at 2N 3E ccw 30deg'],
    ['pan A @ 1>B@ 24 ease 6  12>C@48 carry A , B on 2', 'pan A@1 > B@24 ease 6 12 > C@48 carry A,B on 2'],
    ['truck quick A@1>B@24 fair ア @ 6  85%', 'truck quick A@1 > B@24 fair ア@6 85%'],
    ['pan A@1 > B@24 steps 1 2 8 * 17 4 graduated', 'pan A@1 > B@24 steps 1 2 8*17 4 graduated'],
    ['pan A@1 > B@24 curve 0.3  - 0.4 1 1', 'pan A@1 > B@24 curve 0.3 -0.4 1 1'],
    ['slide A , B ア ( 0,0 )@1>( - 120 , 0 )@6+0', 'slide A,B ア(0,0)@1 > (-120,0)@6+0'],
    ['truck level A 60%@1>130%@24 about 18 , 24', 'truck level A 60%@1 > 130%@24 about 18,24'],
    ['turn level A - 10 @1>360@24 cw', 'turn level A -10@1 > 360@24 cw'],
    ['shake 4mm > 0mm 1 .. 12 sideways', 'shake 4mm>0mm 1..12 sideways'],
    ['expose B 0% > 100% 1..24', 'expose B 0%>100% 1..24'],
    ['effect"heat haze"A , B 1 .. 5+0', 'effect "heat haze" A,B 1..5+0'],
    ['pull BG 30deg 3mm/f 1 .. ', 'pull BG 30deg 3mm/f 1..'],
  ])('%s', (typed, wanted) => {
    expect(format('', typed).left).toBe(0);
    expect(line(typed)).toBe(wanted);
  });

  test('times and numbers keep their spelling', () => {
    expect(line("time  5+00\nfps   24\nA: 007:08'04 1:12")).toBe("time 5+00\nfps 24\nA: 007:08'04 1:12");
  });

  test('full-width characters become plain ones, outside quotes and comments', () => {
    expect(
      formatted(
        'cut　７　「渡し場、夜」　＃　全角、ｏｋ\nＡ“１、２”：　１：１＋０｛late｝ーー２　＠鳴る　（４ー５ー）＊２　６。。\n',
      ),
    ).toBe(
      'cut 7 「渡し場、夜」                      #　全角、ｏｋ\nA "１、２": 1:1+0{late}--2 @鳴る (4-5-)*2 6..\n',
    );
  });

  test('names become NFC, texts stay', () => {
    expect(formatted('stack Cafe\u0301\nmemo "Cafe\u0301"\n')).toBe('stack Caf\u00e9\nmemo "Cafe\u0301"\n');
  });
});

describe('timelines that stand together', () => {
  test('start in one column, measured as a terminal shows it', () => {
    expect(formatted('A "Nao":1..\nア「口」: 1..\nB:1..\n')).toBe(
      'A "Nao":   1..\nア 「口」: 1..\nB:         1..\n',
    );
  });

  test('a blank line, a comment or another statement begins a new block', () => {
    expect(formatted('A "Nao": 1..\n\nB: 1..\n# c\nC "long": 1..\nmemo "x"\nD: 1..\n')).toBe(
      'A "Nao": 1..\n\nB: 1..\n# c\nC "long": 1..\nmemo "x"\nD: 1..\n',
    );
  });

  test('a very long title moves nobody else', () => {
    const title = 'the whole crowd on the jetty, from the left';
    expect(formatted(`A: 1..\nB "${title}": 1..\nC "x":1..\n`)).toBe(
      `A:     1..\nB "${title}": 1..\nC "x": 1..\n`,
    );
  });
});

describe('long lines', () => {
  const keys = (count: number, from = 1) => Array.from({ length: count }, (_, i) => i + from).join(' ');
  const starts = (text: string) =>
    formatted(text)
      .split('\n')
      .filter((each) => each.startsWith(' '))
      .map((each) => each.trim().split(/[ :]/)[0]);

  test('are broken at whole seconds, under the items', () => {
    const text = formatted(`A "Nao": ${keys(60)}..\n`);
    expect(text.split('\n')).toEqual([
      `A "Nao": ${keys(24)}`,
      `         ${keys(24, 25)}`,
      `         ${keys(12, 49)}..`,
      '',
    ]);
  });

  test('with the speed and the exposure that the cut says', () => {
    expect(starts(`on 3\nA: ${keys(60)}..\n`)).toEqual(['33']);
    expect(starts(`fps 30\nA: ${keys(60)}..\n`)).toEqual(['31']);
  });

  test('counted through groups, phrases, lengths, marks and `on`', () => {
    const odd = `1:2+3 (2-3-)*2 walk @hit 4:9 on 1`;
    const text = `mark hit 5+1\nphrase walk = 1--2--\nA: ${odd} ${keys(99, 10)}..\n`;
    // @hit is after 5 seconds, 9 more frames and 15 on ones: key 10 + 15 begins the sixth, 24 more the seventh.
    expect(starts(text)[0]).toBe('25');
  });

  test('where no second is known, at the last item that fits', () => {
    const [first, second] = formatted(`A: elsewhere ${keys(60)}..\n`).split('\n');
    expect(displayWidth(first!)).toBeGreaterThan(95);
    expect(displayWidth(first!)).toBeLessThanOrEqual(100);
    expect(second).toMatch(/^ {3}\d/);
  });

  test('a chain of keys is broken behind a key, never inside a name', () => {
    const chain = `${Array.from({ length: 40 }, (_, i) => i + 1).join('--')}..`;
    const text = formatted(`A: ${chain}\n`);
    expect(text.split('\n').every((each) => displayWidth(each) <= 100)).toBe(true);
    expect(text.replace(/\n {3}/g, '')).toBe(`A: ${chain}\n`);
    expect(text.split('\n')[1]).toMatch(/^ {3}--\d/);
  });

  test('a group longer than a line is broken inside', () => {
    const text = formatted(`A: (${keys(60)})..\n`);
    expect(text.split('\n').length).toBeGreaterThan(2);
    expect(text.replace(/\n +/g, ' ')).toBe(`A: (${keys(60)})..\n`);
  });

  test('other statements go on under their second word, pinned names under the names', () => {
    const levels = Array.from({ length: 20 }, (_, i) => `LEVEL${i}`).join(' ');
    expect(formatted(`stack ${levels}\n`)).toMatch(/^stack LEVEL0 .*\n {6}LEVEL\d/);
    expect(formatted(`cels A ${keys(60)}\n`)).toMatch(/^cels A 1 .*\n {7}\d+ /);
  });

  test('what belongs together stays in one line', () => {
    const first = `voice "Oda" 1+13..3+12 "${'a'.repeat(60)}"`;
    expect(formatted(`${first} @2+1 "and more"\n`)).toBe(`${first}\n      @2+1 "and more"\n`);
    const legs = Array.from({ length: 6 }, (_, i) => ` > F${i}@${24 * i + 24} ease 6 12`).join('');
    const after = formatted(`pan A@1${legs} carry A,B,C on 2\n`);
    expect(after.replace(/\n {4}/g, ' ')).toBe(`pan A@1${legs} carry A,B,C on 2\n`);
    expect(after.split('\n')[1]).toMatch(/^ {4}(> F\d|carry)/);
  });

  test('a text that fits no line stays where it is', () => {
    const memo = `memo "${'word '.repeat(30)}"\n`;
    expect(formatted(memo)).toBe(memo);
  });

  test('behind what fits no line it goes on in the next', () => {
    const words = 'word '.repeat(30);
    expect(formatted(`voice "${words}" 1..2 "${words}" @3 "a"\n`)).toBe(
      `voice "${words}"\n      1..2 "${words}"\n      @3 "a"\n`,
    );
  });

  test('that the writer broke before a drawing stay broken there, and nowhere else', () => {
    const text = 'A "Nao": 1:12\n  1--\n 2 (4-\n 5-)*3\n\t6 x\n : 4 @\n 1+0 7..\nphrase walk =\n 1\n 2\n';
    expect(formatted(text)).toBe(
      'A "Nao": 1:12\n         1--2 (4-5-)*3\n         6 x:4 @1+0 7..\nphrase walk = 1\n              2\n',
    );
    expect(formatted(formatted(text))).toBe(formatted(text));
  });

  test('that were broken in a group, or between two texts, stay so', () => {
    const text = 'A: (1 2\n    3 4)..\nvoice "Nao" 1..9 "Ah"\n  @4 "so"\n "late"\n';
    expect(formatted(text)).toBe('A: (1 2\n   3 4)..\nvoice "Nao" 1..9 "Ah"\n      @4 "so"\n      "late"\n');
  });

  test('broken by the writer and still too long are broken again', () => {
    const text = formatted(`A: 1:12\n ${keys(60)}..\n`);
    expect(text.split('\n')[0]).toBe('A: 1:12');
    expect(text.split('\n').every((each) => displayWidth(each) <= 100)).toBe(true);
    expect(formatted(text)).toBe(text);
  });

  test('wide characters count two', () => {
    const names = Array.from({ length: 30 }, (_, i) => `空気${i}`).join(' ');
    expect(
      formatted(`stack ${names}\n`)
        .split('\n')
        .every((each) => displayWidth(each) <= 100),
    ).toBe(true);
  });
});

describe('comments and blank lines', () => {
  test('stand where they stood', () => {
    const text =
      '# head\n\ncut 1                                     # one\n# below\n\nA: 1                                      # waits\n   # looks\n   --2                                    # turns\n\n   -3..\n# end\n';
    expect(formatted(text)).toBe(text);
  });

  test('comments on lines under each other start in one column', () => {
    expect(formatted('cut 1 # a\ntime 2+0      # b\n\nscene 3 # c\n')).toBe(
      `cut 1${' '.repeat(37)}# a\ntime 2+0${' '.repeat(34)}# b\n\nscene 3${' '.repeat(35)}# c\n`,
    );
    const long = `memo "${'x'.repeat(60)}"`;
    expect(formatted(`cut 1 # a\n${long} # b\n`)).toBe(`cut 1${' '.repeat(64)}# a\n${long}  # b\n`);
  });

  test('blanks at the ends of lines and files go, runs of blank lines are one', () => {
    expect(formatted('\n \n# a  \n\n\t\n　\ncut 1  \n\n\n')).toBe('# a\n\ncut 1\n');
    expect(formatted('\n\n')).toBe('');
  });

  test('line ends are LF, a byte-order mark goes, the last line ends', () => {
    expect(formatted('\ufeffcut 1\r\n\r\n# a\rtime 1+0')).toBe('cut 1\n\n# a\ntime 1+0\n');
  });

  test('a comment in the middle of a heading keeps it in order', () => {
    const text = 'A # the girl\n  "Pim" # waits\n :  # here\n  1-2..\n';
    expect(formatted(formatted(text))).toBe(formatted(text));
    expect(formatted(text).replace(/\s+/g, ' ')).toBe('A # the girl "Pim" # waits : # here 1-2.. ');
  });
});

describe('texts of unusual size', () => {
  test.each([
    ['one statement of many items', (n: number) => `A: ${'1 2--3 '.repeat(n)}`],
    ['many comments and controls', (n: number) => '# a\n\u0001\ncut 1 # b\n'.repeat(n)],
    ['one chain', (n: number) => `A: ${'1--'.repeat(n)}2`],
    ['one group', (n: number) => `A: (${'1--2 '.repeat(n)})`],
    ['many timelines with comments', (n: number) => 'A: 1.. # c\n'.repeat(n)],
  ])('%s are formatted, once and for all', (_, make) => {
    const once = format('', make(4_000)).text;
    expect(once.length).toBeGreaterThan(10_000);
    expect(format('', once).text).toBe(once);
  });
});

describe('what cannot be read', () => {
  test('stays to the byte, with its comments and line ends, and is counted', () => {
    const broken = 'tmie   1+0　　# so \r\n   １  # and';
    expect(format('', `cut   1\n${broken}  \n\n\nA:1..\n`)).toEqual({
      text: `cut 1\n${broken}  \n\nA: 1..\n`,
      left: 1,
    });
  });

  test('indented lines with no statement above', () => {
    expect(format('', '\n   1--2   # a\n  3\ncut  1\n')).toEqual({
      text: '   1--2   # a\n  3\ncut 1\n',
      left: 1,
    });
  });

  test('unclosed text, and a statement with a character of control', () => {
    const text = 'memo   "a\ntime   1\u00010\n \u0002 # x\ncut 1\n';
    expect(format('', text)).toEqual({ text, left: 3 });
  });
});

describe('what cannot be taken apart safely stays as typed', () => {
  test('a character that is none', () => {
    for (const text of ['cut 1\n\uffff\nA: 1..\n', 'A: 1\uffff..\n']) expect(formatted(text)).toBe(text);
    expect(formatted('\ufeff\rcut 1\r\uffff\rtime 1+0\r')).toBe('cut 1\n\uffff\ntime 1+0\n');
  });

  test('an indented line that may be the timeline of another level', () => {
    const slip = 'A:  1--2..\n B:  3 1..\n';
    expect(format('this.cut', `cut  1\n${slip}`)).toEqual({ text: `cut 1\n${slip}`, left: 1 });
    expect(formatted(`${slip}phrase B = 1 2\n`)).toBe('A: 1--2..\n   B:3 1..\nphrase B = 1 2\n');
    // Where the phrase may come from a file that is used, nothing is said of it.
    expect(format('this.cut', `use "house.cut"\n${slip}`)).toEqual({
      text: `use "house.cut"\n${slip}`,
      left: 0,
    });
  });

  test('a letter that Unicode writes as two', () => {
    const once = formatted('A: 1--3\u0958.. 3\u0958.1a\n');
    expect(once).toBe('A: 1--3\u0915\u093c.. 3\u0915\u093c.1a\n');
    expect(parse('this.cut', once).diagnostics).toEqual([]);
    expect(formatted(once)).toBe(once);
  });
});

describe('every kind of statement', () => {
  const TIMES = ['hit-4', 'hit+6', 'hit', '12', '1+6', "8'04"];
  const BLANKS = ['', ' ', '  ', '\n  '];
  const TIME = /^(?:Integer|Seconds|Feet)$/;
  const reads = (text: string) => {
    const { tree, diagnostics } = parse('this.cut', text);
    return diagnostics.length === 0 && tree.statements.length === 1 ? bare(tree.statements[0]) : null;
  };

  /** Its example with other times, ties to rows before its texts, and other blanks. */
  function varied(example: string, dice: readonly number[]): string {
    let rolled = 0;
    const roll = (sides: number) => (dice[rolled++ % dice.length]! + rolled) % sides;
    let out = '';
    let end = 0;
    for (const { kind, span } of parse('', example).tokens) {
      const gap = example.slice(end, span.start);
      out += gap !== '' && roll(2) === 0 ? BLANKS[roll(BLANKS.length)]! : gap;
      const typed = example.slice(span.start, span.end);
      if (kind === 'Text' && roll(3) === 0) out += `@${TIMES[roll(TIMES.length)]!} `;
      out += TIME.test(kind) && roll(2) === 0 ? TIMES[roll(TIMES.length)]! : typed;
      end = span.end;
    }
    return out + example.slice(end);
  }

  test.each(statementTable.map(({ example }) => example))('%s reads back as the same tree', (example) => {
    let read = 0;
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 30, maxLength: 30 }), (dice) => {
        const text = varied(example, dice);
        const tree = reads(text);
        if (tree === null) return;
        read++;
        const after = formatted(text);
        expect([after, reads(after)]).toEqual([after, tree]);
        expect(formatted(after)).toBe(after);
      }),
      { numRuns: 60 },
    );
    expect(read).toBeGreaterThan(0);
  });

  test.each(['voice "N" 12..48 "x" @hit-4 "y"', 'music 1.. "x" @hit+4 "y"', 'sound hit-2.. @hit-1 "x"'])(
    '%s keeps its ties to marks',
    (text) => {
      expect(line(text)).toBe(text);
    },
  );
});
