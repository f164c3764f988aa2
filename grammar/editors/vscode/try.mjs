/**
 * Tries the packed extension in a real VS Code in a browser, by hand: no test runs this, since the editor takes some minutes to set up.
 *
 *     npm install code-server@4.99.4 --ignore-scripts        in a folder of its own; Node 20
 *     (in node_modules/code-server/lib/vscode: npm install --omit=dev --ignore-scripts without the dependency kerberos, then
 *      node-gyp rebuild in node-pty, @vscode/spdlog, native-watchdog and @parcel/watcher; argon2 may be a stub with --auth none)
 *     node out/node/entry.js --install-extension out/cutwright-0.1.0.vsix …, then with --auth none on a port
 *     node grammar/editors/vscode/try.mjs http://127.0.0.1:PORT/?folder=A_COPY_OF_SALTMARSH PICTURES_FOLDER
 *
 * Says what was found and leaves pictures of it. Last run on 27 November 2026, with code-server 4.99.4 (VS Code 1.99) in Debian's Chromium.
 */

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';

const [url, folder = 'out/vscode'] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const browser = await puppeteer.launch({
  executablePath: '/usr/bin/chromium',
  headless: true,
  args: ['--no-sandbox', '--disable-gpu'],
  protocolTimeout: 180_000,
});
const page = await browser.newPage();
page.setDefaultTimeout(60_000);
await page.setViewport({ width: 1600, height: 1000 });
const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
let taken = 0;
const picture = (name) => page.screenshot({ path: join(folder, `${++taken}-${name}.png`) });
const say = (what, found) => process.stdout.write(`${what}: ${found}\n`);
const texts = (selector) =>
  page.$$eval(selector, (all) => all.map((one) => one.textContent.trim()).filter(Boolean));

async function palette(text) {
  await page.keyboard.press('F1');
  await page.waitForSelector('.quick-input-widget .input');
  await page.keyboard.type(text);
  await wait(1200);
  await page.keyboard.press('Enter');
  await wait(1500);
}

const at = new URL(url);
const file = `vscode-remote://${at.host}${at.searchParams.get('folder')}/cuts/c012.cut`;
at.searchParams.set('payload', JSON.stringify([['openFile', file]]));
process.on('uncaughtException', async (fault) => {
  await picture('failed');
  process.stderr.write(`${fault}\n`);
  process.exit(1);
});
await page.goto(at.href, { waitUntil: 'domcontentloaded' });
await page.waitForSelector('.monaco-workbench');
await wait(6000);
await page.waitForSelector('.view-line', { timeout: 120_000 });
await wait(8000);
say('lens', (await texts('.codelens-decoration')).join(' | '));
say('problems in the status bar', (await texts('#status\\.problems')).join());
await picture('opened');

// The pages beside the text, from the text as it stands in the editor.
await palette('Cutwright: Show the pages beside');
await wait(9000);
const view = async () => {
  for (const frame of page.frames()) {
    if ((await frame.$('#pages').catch(() => null)) && (await frame.$('#word').catch(() => null)))
      return frame;
  }
  return null;
};
const frame = await view();
say('pages', frame ? await frame.$$eval('figure', (all) => all.length) : 'no view');
await picture('pages');

if (frame) {
  const row = await frame.$('.row[data-frame="20"]');
  const box = await row.boundingBox();
  await page.mouse.click(box.x + box.width * 0.1, box.y + box.height / 2);
  await wait(2500);
  say('selected after a click on row 20', (await texts('#status\\.editor\\.selection')).join());
  say('lit rows', await frame.$$eval('.lit', (all) => all.length));
  await picture('jumped');
}

// An unsaved slip: the pages stay and say so; the problem has more than one mend.
await palette('View: Focus First Editor Group');
await page.keyboard.down('Control');
await page.keyboard.press('Home');
await page.keyboard.up('Control');
await page.keyboard.press('ArrowDown');
await page.keyboard.press('End');
await page.keyboard.press('Backspace');
await page.keyboard.press('Backspace');
await page.keyboard.type('2');
await page.keyboard.press('Escape');
for (let i = 0; i < 9; i++) await page.keyboard.press('ArrowDown');
await page.keyboard.press('End');
await page.keyboard.press('Backspace');
await page.keyboard.press('Backspace');
await wait(4000);
say('word over the pages', frame ? await frame.$eval('#word', (one) => one.textContent) : '');
await picture('unsaved');
await page.keyboard.down('Control');
await page.keyboard.press('Period');
await page.keyboard.up('Control');
await wait(3500);
say('mends', (await texts('.action-widget .action-list-item, .action-widget .monaco-list-row')).join(' | '));
await picture('mends');
await page.keyboard.press('Escape');
await palette('Cutwright: Explain the problem');
await wait(5000);
await picture('explained');

// Problems of cuts that are not open, and symbols of the whole episode.
await palette('Problems: Focus on Problems View');
await wait(2500);
say(
  'files with problems',
  (await texts('.markers-panel .resource-label-container, .markers-panel .file-icon')).join(' | '),
);
await picture('problems');
await page.keyboard.press('F1');
await wait(400);
await page.keyboard.press('Backspace');
await page.keyboard.type('#ferry');
await wait(3000);
say('symbols', (await texts('.quick-input-list .monaco-list-row')).slice(0, 6).join(' | '));
await picture('symbols');
await browser.close();
