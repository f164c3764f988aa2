/** Pages that list what there is, held to it: the index, all options of `build`, all fields of the JSON. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { main } from '../src/command/main.js';
import { jsonText, toJson } from '../src/export/cut-json.js';
import { memoryHost } from '../src/host/memory-host.js';
import { statementPages } from '../src/reference/statement-pages.js';
import { compileText } from './compile.js';
import { indexPage } from './index-page.js';
import { kept } from './pictures.js';

test('the index is made of what there is (UPDATE=1 writes it)', () => {
  const page = indexPage();
  for (const name of Object.keys(statementPages)) expect(page).toContain(`| \`${name}\` | statement`);
  for (const word of ['carry', '引き', 'handle', 'cutwright build']) expect(page).toContain(word);
  const [is, should] = kept('grammar/a-to-z.md', page);
  expect(is).toBe(should);
});

test('the page about printing has every option of build', async () => {
  const host = memoryHost();
  await main(['build', '--help'], host);
  const options = [...host.printed().matchAll(/^ {2}(?:-\w, )?(--[a-z-]+)/gm)].map(([, option]) => option!);
  expect(options.length).toBeGreaterThan(15);
  const page = readFileSync('grammar/printing.md', 'utf8');
  expect(options.filter((option) => !page.includes(option))).toEqual([]);
});

describe('the page about JSON', () => {
  const page = readFileSync('grammar/json.md', 'utf8');
  const schema = JSON.parse(readFileSync('src/export/schema.json', 'utf8'));

  test('has the fields of the schema, each once in its section', () => {
    const parts: Record<string, { properties: object }> = {
      'The cut': schema,
      Handles: schema.properties.handles,
      'A level': schema.$defs.level,
      'An exposure': schema.$defs.exposure,
      'A drawing': schema.$defs.drawing,
      'A passage': schema.$defs.passage,
      'The camera on a frame': schema.$defs.camera,
      'A level’s place on a frame': schema.$defs.placement,
      Artwork: schema.$defs.artwork,
      'The recording': schema.properties.track,
      Counts: schema.properties.counts,
      'A message': schema.$defs.diagnostic,
    };
    const told = Object.fromEntries(
      page
        .split(/^## /m)
        .slice(1)
        .flatMap((section) => {
          const title = section.split('\n')[0]!.replace("'", '’');
          const cells = [...section.matchAll(/^\| (`[^|]*`) \|/gm)].map(([, cell]) => cell!);
          const fields = cells.flatMap((cell) => [...cell.matchAll(/`(\w+)`/g)].map(([, field]) => field!));
          return fields.length > 0 ? [[title, fields.sort()]] : [];
        }),
    );
    expect(told).toEqual(
      Object.fromEntries(
        Object.entries(parts).map(([title, { properties }]) => [title, Object.keys(properties).sort()]),
      ),
    );
  });

  test('shows what its example comes out as (UPDATE=1 writes it)', () => {
    const text = /^```cut[^\n]*\n([\s\S]*?)^```$/m.exec(page)![1]!;
    const { solved, diagnostics, sources } = compileText(text);
    const json = jsonText(toJson(solved!, diagnostics, sources));
    const [is, should] = kept(
      'grammar/json.md',
      page.replace(/^```json\n[\s\S]*?^```$/m, () => `\`\`\`json\n${json.trimEnd()}\n\`\`\``),
    );
    expect(is).toBe(should);
  });
});
