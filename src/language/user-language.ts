/** The language in which the program speaks to whoever runs it. What a sheet is printed in is another matter: `labels` of the cut's episode. */

export const USER_LANGUAGES = ['en', 'ja'] as const;
export type UserLanguage = (typeof USER_LANGUAGES)[number];

/** Variables of the system that name its language; the first that is set counts (POSIX, XBD 8.2). */
const SYSTEM = ['LC_ALL', 'LC_MESSAGES', 'LANG'] as const;

/**
 * What `CUTWRIGHT_LANGUAGE` names, else `editor` (the language of an editor's own menus, such as `ja`), else the system's
 * language; English where that is none of ours. `--language` is put into the variable before anything asks.
 */
export function userLanguage(host: { env(name: string): string | undefined }, editor?: string): UserLanguage {
  return (
    known(host.env('CUTWRIGHT_LANGUAGE')) ??
    (editor ? (known(editor) ?? 'en') : undefined) ??
    systemLanguage(host) ??
    'en'
  );
}

function systemLanguage(host: { env(name: string): string | undefined }): UserLanguage | undefined {
  const locale = SYSTEM.map((name) => host.env(name)).find(Boolean);
  // Where the terminal reads another encoding, UTF-8 that is no ASCII would be a mess.
  return locale !== undefined && /\.(?!utf-?8\b)/i.test(locale) ? undefined : known(locale);
}

/** Other names that are typed for a language: the country's, and the English word. */
const ALSO_CALLED: Readonly<Record<string, UserLanguage>> = {
  jp: 'ja',
  jpn: 'ja',
  japanese: 'ja',
  eng: 'en',
  english: 'en',
};

/** Of `ja`, `ja-JP` and `ja_JP.UTF-8` the `ja`. */
function known(name: string | undefined): UserLanguage | undefined {
  const typed = name?.toLowerCase().match(/^[a-z]+/)?.[0] ?? '';
  const language = ALSO_CALLED[typed] ?? typed;
  return USER_LANGUAGES.find((one) => one === language);
}
