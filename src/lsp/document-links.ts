/** The files that a text names, to be opened with a click. */

import { dirname, join, resolve } from 'node:path';
import type { DocumentLink } from 'vscode-languageserver';
import { isInReach } from '../episode/used-files.js';
import type { Span } from '../language/diagnostic.js';
import { NameScope } from './name-scope.js';
import { type Analysis, isManifest, type Workspace } from './workspace.js';

/** `use "house.cut"`, `track "c012.wav"`, the cut of a `reuse`; in a manifest the cuts that it lists. */
export function linksIn(workspace: Workspace, analysis: Analysis): DocumentLink[] {
  const { text, open, compiled, episode, index } = analysis;
  if (open.path === null) return [];
  const folder = dirname(open.path);
  const { world } = workspace;
  const link = (span: Span, path: string): DocumentLink[] =>
    world.kind(path) === 'file' ? [{ range: text.range(span), target: workspace.uriOf(path) }] : [];
  if (isManifest(analysis))
    return (episode.cuts ?? []).flatMap(({ text: file, span }) => link(span, join(folder, file)));
  const named = (compiled?.tree?.statements ?? []).flatMap((one) =>
    (one.kind === 'use' || one.kind === 'track') && isInReach(world, one.path.text, folder, episode.folder)
      ? link(one.path.span, resolve(folder, one.path.text))
      : [],
  );
  if (index.reuses.length === 0) return named;
  const scope = new NameScope(workspace, analysis);
  const lenders = index.reuses.flatMap(({ cutSpan }) => {
    const lender = scope.lenderAt(cutSpan.start);
    return lender ? link(cutSpan, lender.path) : [];
  });
  return [...named, ...lenders];
}
