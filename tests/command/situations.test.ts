import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import type { JsonReport } from '../../src/language/report/machine-reports.js';
import { englishIn } from '../japanese-text.js';
import { run } from './run.js';
import { situations } from './situations.js';

describe.each(Object.entries(situations))('%s', (code, { files, prepare, failing, status, mend, mended }) => {
  const codes = (report: string) => (JSON.parse(report) as JsonReport).diagnostics.map((one) => one.code);

  test('is told, leaves with the right status, and is gone when it is mended', async () => {
    const host = memoryHost(files);
    prepare?.(host);
    const wrong = await run(host, ...failing, '--format', 'json');
    expect(codes(wrong.error)).toContain(code);
    expect(wrong.status).toBe(status);
    mend?.(host);
    const right = await run(host, ...mended, '--format', 'json');
    expect(codes(right.error)).toEqual([]);
    expect(right.status).toBe(0);
  });

  test('is told in Japanese', async () => {
    const host = memoryHost(files);
    prepare?.(host);
    host.variables.set('CUTWRIGHT_LANGUAGE', 'ja');
    const { error } = await run(host, ...failing);
    const [, sentence = error] =
      new RegExp(`(?:誤り|注意|ヒント): (.*[。？])\\n.*: ${code}\\n`).exec(error) ?? [];
    const texts = Object.entries(files)
      .map(([path, text]) => `${path} ${text}`)
      .join(' ');
    expect(englishIn(sentence, `${failing.join(' ')} ${texts}`), sentence).toEqual([]);
  });

  test('is told to people, too, by its code', async () => {
    const host = memoryHost(files);
    prepare?.(host);
    const { error } = await run(host, ...failing);
    expect(error).toMatch(new RegExp(`(Error|Warning|Hint): [^a-z].*[.?]\\n.*: ${code}\\n`));
  });
});
