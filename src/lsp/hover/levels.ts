import type { Artwork } from '../../solve/camera/solved.js';
import type { SolvedLevel } from '../../solve/solved.js';
import type { Analysis } from '../workspace.js';
import { figure, lasting, listed } from './words.js';

/** A level: what it shows, how much is drawn for it, the artwork that it needs. */
export function levelText({ compiled }: Analysis, name: string): string | null {
  const { solved, shot } = compiled ?? {};
  const level = solved?.levels.find((one) => one.name === name);
  if (!solved || !shot || !level) return null;
  const lines = [`Level **${name}**${level.title ? ` “${level.title}”` : ''}`];
  if (level.timed) lines.push(drawnText(level), usedText(level, shot.fps));
  if (level.reuse) lines.push(`reuses the drawings of ${level.reuse.cut}/${level.reuse.level}`);
  if (level.missing.length > 0)
    lines.push(`numbers not used: ${listed(level.missing.map(({ cel }) => `${name}${cel}`))}`);
  const artwork = solved.camera.artwork.get(name);
  if (artwork) lines.push(artworkText(artwork));
  return lines.join('  \n');
}

function drawnText({ drawings }: SolvedLevel): string {
  const fresh = drawings.filter(({ reused }) => !reused);
  const count = (kind: string): number => fresh.filter((one) => one.kind === kind).length;
  const parts = [
    `${count('key')} keys`,
    ...(count('breakdown') > 0 ? [`${count('breakdown')} breakdowns`] : []),
    `${count('inbetween')} in-betweens`,
  ];
  const reused = drawings.length - fresh.length;
  return `${fresh.length} drawings: ${parts.join(', ')}${reused > 0 ? `; ${reused} reused` : ''}`;
}

function usedText({ exposures }: SolvedLevel, fps: number): string {
  const shown = exposures.filter(({ kind }) => kind !== 'empty').length;
  const empty = exposures.length - shown;
  return `seen on ${lasting(shown, fps)} of ${lasting(exposures.length, fps)}${empty > 0 ? `, empty on ${empty}` : ''}`;
}

function artworkText({ width, height, needed, loop }: Artwork): string {
  const size = (w: number, h: number): string => `${figure(w)} × ${figure(h)} mm`;
  const given = width !== null && height !== null ? `, it has ${size(width, height)}` : '';
  const tiled = loop ? `, painted as a loop of ${figure(loop.lengthMm)} mm` : '';
  return needed ? `artwork needed ${size(needed.width, needed.height)}${given}${tiled}` : 'never seen';
}
