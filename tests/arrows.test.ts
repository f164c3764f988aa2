import { readdirSync } from 'node:fs';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';
import extractOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import extractTsConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import { describe, expect, test } from 'vitest';

const options = await extractOptions('./.dependency-cruiser.mjs');
const tsConfig = extractTsConfig('./tsconfig.json');

async function cruised(folder = 'src', more: ICruiseOptions = {}): Promise<ICruiseResult> {
  const { output } = await cruise([folder], { ...options, ...more, validate: true }, {}, { tsConfig });
  return output as ICruiseResult;
}

describe('the arrows of the pipeline', async () => {
  const { modules, summary } = await cruised();
  const sources = modules.filter(({ source }) => source.startsWith('src/'));

  test('every module was seen, with what it imports', () => {
    const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((one) =>
      one.endsWith('.ts'),
    );
    expect(sources.map(({ source }) => source).sort()).toEqual(files.map((one) => `src/${one}`).sort());
    const pdf = sources.find(({ source }) => source === 'src/print/pdf.ts')!;
    expect(pdf.dependencies.map(({ resolved }) => resolved)).toEqual(
      expect.arrayContaining(['src/print/page-writer.ts', 'src/sheet/display-list.ts', 'crypto']),
    );
    const packages = sources.flatMap(({ dependencies }) => dependencies.map(({ resolved }) => resolved));
    for (const name of ['chokidar', 'yaml', 'commander']) {
      expect(packages.some((one) => one.startsWith(`node_modules/${name}/`))).toBe(true);
    }
  });

  test('no module imports what it must not know', () => {
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`)).toEqual([]);
  });

  test('a forbidden import would be found', async () => {
    const forbidden = [
      {
        name: 'no-marks',
        severity: 'error' as const,
        from: { path: '^src/print' },
        to: { path: 'display-list' },
      },
    ];
    const { summary } = await cruised('src/print', {
      doNotFollow: { path: '^src/(?!print)' },
      ruleSet: { forbidden },
    });
    expect(summary.violations.some(({ from }) => from === 'src/print/pdf.ts')).toBe(true);
  });
});
