import type { DocumentWords } from '../document-words.js';

export const documents: DocumentWords = {
  parts: {
    sheet: 'シート',
    charts: '中割り',
    camera: 'カメラワーク',
    table: '移動表',
    strip: '目盛り 原寸',
    overlay: 'フレーム 原寸',
  },
  blankForms: '用紙',
  newCut: '新規カット',
  cut: (name) => `カット ${name}`,
  noteCut: (name) => `カット ${name}`,
  onlyIn: (version, cuts) => `${version ?? '現在'} のみ：カット ${cuts}`,
};
