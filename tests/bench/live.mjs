/**
 * The live view of a watch in Chromium: from the end of a save to the next picture of the screen that shows it, as a person sees it. The
 * page itself says when: two frames after its pages have changed, the pixels have.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import puppeteer from 'puppeteer-core';
import { writeEpisode } from './generated.mjs';
import { median, milliseconds, report } from './measure.mjs';

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);
const PROGRAM = fileURLToPath(new URL('../../bin/cutwright.js', import.meta.url));

/** The address of the live view, once every cut is printed. */
function ready(child) {
  let said = '';
  return new Promise((resolve, reject) => {
    child.stderr.on('data', (chunk) => {
      said += chunk;
      const url = said.match(/shown at (\S+)/)?.[1];
      if (url && said.includes('Ctrl-C ends it')) resolve(url);
    });
    child.once('exit', () => reject(new Error(`the watch has ended: ${said}`)));
  });
}

/** In the browser: when the pages that are shown have changed and been drawn. */
function changedPixels() {
  const pages = document.querySelector('#pages');
  window.changed = new Promise((resolve) => {
    const within = ({ target }) =>
      (target instanceof Element ? target : target.parentElement)?.closest('.paper');
    const seen = new MutationObserver((changes) => {
      // What stands around a page, its caption and the like, is no pixel of it.
      if (!changes.some(within)) return;
      seen.disconnect();
      requestAnimationFrame(() => requestAnimationFrame(resolve));
    });
    seen.observe(pages, { subtree: true, childList: true, characterData: true });
  });
}

export async function measureLive({ cuts = 300, rounds = 12 } = {}) {
  if (!CHROMIUM) {
    report('save to changed pixels in the live view', 'not measured: Chromium is not installed');
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  const episode = writeEpisode(folder, { cuts });
  const { file, number, text } = episode.cuts[cuts >> 1];
  const child = spawn(process.execPath, [PROGRAM, 'watch', '.', '--preview'], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const shown = ready(child);
  const browser = await puppeteer.launch({
    executablePath: CHROMIUM,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu'],
    protocolTimeout: 600_000,
  });
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(600_000);
    await page.goto(await shown);
    await page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('#list button')].some(
          (one) => one.querySelector('.number').textContent === wanted,
        ),
      {},
      number,
    );
    await page.$$eval(
      '#list button',
      (all, wanted) => all.find((one) => one.querySelector('.number').textContent === wanted).click(),
      number,
    );
    await page.waitForFunction(
      (wanted) => document.title.startsWith(`Cut ${wanted}`) && document.querySelector('#pages svg') !== null,
      {},
      number,
    );
    const took = [];
    for (let round = 1; round <= rounds; round++) {
      await page.evaluate(changedPixels);
      writeFileSync(join(folder, file), `${text}note 1 "take ${round}"\n`);
      const start = performance.now();
      await page.evaluate(() => window.changed);
      took.push(performance.now() - start);
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
    report(
      `save to changed pixels in the live view, one of ${cuts} cuts`,
      milliseconds(median(took)),
      '150 ms',
    );
  } finally {
    await browser.close();
    child.removeAllListeners('exit');
    child.kill('SIGTERM');
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  await measureLive({ cuts: Number(process.argv[2] ?? 300) });
