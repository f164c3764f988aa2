import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { brotliDecompressSync } from 'node:zlib';
import { type FontFile, type LivePageFile, type Reading, reasonOf } from './host.js';

/** Where the shipped font lies beside the bundle, and where it comes from. */
const FILES = {
  regular: {
    shipped: 'font/NotoSansJP-Regular.ttf',
    source: '@expo-google-fonts/noto-sans-jp/400Regular/NotoSansJP_400Regular.ttf',
  },
  bold: {
    shipped: 'font/NotoSansJP-Bold.ttf',
    source: '@expo-google-fonts/noto-sans-jp/700Bold/NotoSansJP_700Bold.ttf',
  },
  /** Made by the build; there is none beside the sources. */
  latin: { shipped: 'font/latin.json', source: null },
};

/** A font file: beside the bundle, or from the package it was copied from when the sources run unbundled. */
export function shippedFont(name: FontFile): Reading<Uint8Array> {
  const { shipped, source } = FILES[name];
  try {
    return { ok: true, value: readFileSync(new URL(shipped, import.meta.url)) };
  } catch (error) {
    try {
      if (source === null) throw error;
      return { ok: true, value: readFileSync(createRequire(import.meta.url).resolve(source)) };
    } catch {
      return { ok: false, reason: reasonOf(error) };
    }
  }
}

/** Bundles the page's own program; only where the sources run unbundled. */
const BUNDLER = '../../scripts/page-bundle.cjs';

/** A file of the live view's page: beside the bundle, or beside the sources, or made of them when they run unbundled. */
export function shippedPage(name: LivePageFile): Reading<Uint8Array> {
  try {
    return { ok: true, value: readFileSync(new URL(`page/${name}`, import.meta.url)) };
  } catch (error) {
    try {
      if (name === 'page-modules.js')
        return { ok: true, value: createRequire(import.meta.url)(BUNDLER).pageBundle() };
      return { ok: true, value: readFileSync(new URL(`../preview/page/${name}`, import.meta.url)) };
    } catch {
      return { ok: false, reason: reasonOf(error) };
    }
  }
}

/** How English words are pronounced, a word a line; of the package that it comes from when the sources run unbundled. */
export function shippedEnglishWords(): Reading<string> {
  try {
    const packed = readFileSync(new URL('english-words.br', import.meta.url));
    return { ok: true, value: brotliDecompressSync(packed).toString('utf8') };
  } catch (error) {
    try {
      const path = createRequire(import.meta.url).resolve('cmu-pronouncing-dictionary');
      return { ok: true, value: englishWordsOf(readFileSync(path, 'utf8')) };
    } catch {
      return { ok: false, reason: reasonOf(error) };
    }
  }
}

/** `WORD SOUNDS` a line out of the source of the npm package `cmu-pronouncing-dictionary`; of several pronunciations the first. */
export function englishWordsOf(source: string): string {
  const lines = source.matchAll(/^ {2}"?([a-z][a-z'.-]*|'[a-z]+)"?: "([A-Z0-2 ]+)",?$/gm);
  return `\n${[...lines].map(([, word, sounds]) => `${word} ${sounds}`).join('\n')}\n`;
}
