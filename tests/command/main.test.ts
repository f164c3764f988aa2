import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from './run.js';

const COMMANDS = ['check', 'build', 'export', 'show', 'blank', 'explain'];

describe('help', () => {
  test('is asked for on standard output, and given unasked on standard error', async () => {
    for (const argv of [['--help'], ['-h'], ['help']]) {
      const { status, out, error } = await runOn({}, ...argv);
      expect({ status, error }).toEqual({ status: 0, error: '' });
      for (const command of COMMANDS) expect(out).toContain(`\n  ${command} `);
    }
    expect(await runOn({})).toMatchObject({ status: 2, out: '' });
  });

  test.each(COMMANDS)('of %s teaches by example, and the examples are no wrong use', async (command) => {
    const { status, out } = await runOn({}, command, '--help');
    expect(status).toBe(0);
    expect((await runOn({}, 'help', command)).out).toBe(out);
    const lines = [...out.split('Examples:')[1]!.matchAll(/^ {2}cutwright (.*?)(?: {3}.*)?$/gm)].map(
      ([, line]) => line!,
    );
    expect(lines.length).toBeGreaterThanOrEqual(2);
    for (const line of lines) {
      const files = {
        // With in-betweens and graduations, so that every part of it can be printed.
        'c012.cut': `${CUT}field B full at 20,0\npan full@1 > B@1+0 graduated\n`,
        'cuts/c1.cut': CUT,
        'cuts/c2.cut': CUT.replace('1', '2'),
        'episode.yaml': 'cuts: "cuts/*.cut"',
      };
      const host = memoryHost(files);
      host.revisions.set('HEAD~1', memoryHost(files));
      host.input = Buffer.from(CUT);
      const argv = line.replace(/ [<>] \S+/g, '').split(' ');
      const { status, error } = await run(host, ...argv);
      expect({ line, status, error: error.match(/^Error: .*/gm) }).toEqual({ line, status: 0, error: null });
    }
  });

  test('--version', async () => {
    expect(await runOn({}, '--version')).toMatchObject({
      status: 0,
      out: expect.stringMatching(/^cutwright \d+\.\d+\.\d+\n$/),
    });
  });
});
