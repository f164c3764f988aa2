/** Whether fields lie on the field chart, and whether the scan has pixels enough for them. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Field } from '../../../shot/camera/camera-model.js';
import type { Settings } from '../../../shot/settings.js';
import type { CameraContext } from '../camera-context.js';
import { turnOf } from '../plane-turns.js';
import type { CameraFrame, PlacementFrame } from '../solved-camera.js';

/**
 * A field fits the chart where |E| + F and |N| + F are not more than the chart's lines (computed from its geometry; a step
 * is half a line). A turned field reaches as far as its corners.
 */
export function checkChart(fields: readonly Field[], settings: Settings, report: Report): void {
  const { widthMm, heightMm } = settings.field;
  const lines = settings.fields;
  for (const field of fields) {
    if (field.notation !== 'chart') continue;
    const t = turnOf(field.turnDeg);
    const height = (field.widthMm * heightMm) / widthMm;
    const reachX = (Math.abs(field.widthMm * t.cos) + Math.abs(height * t.sin)) / widthMm;
    const reachY = (Math.abs(field.widthMm * t.sin) + Math.abs(height * t.cos)) / heightMm;
    const east = (Math.abs(field.xMm) / widthMm) * 2 * lines + reachX * lines;
    const north = (Math.abs(field.yMm) / heightMm) * 2 * lines + reachY * lines;
    const reaches: { lines: number; side: 'north' | 'south' | 'east' | 'west' }[] = [];
    if (east > lines + 1e-6) reaches.push({ lines: east, side: field.xMm < 0 ? 'west' : 'east' });
    if (north > lines + 1e-6) reaches.push({ lines: north, side: field.yMm < 0 ? 'south' : 'north' });
    if (reaches.length === 0) continue;
    report(diagnose('field-off-chart', field.span, { field: field.name, lines, reaches }));
  }
}

interface Smallest {
  readonly widthMm: number;
  readonly frame: number;
  readonly level: string | null;
}

/** From a field of (output pixels × 25.4 / dpi) mm down a scan is enlarged; a level that is trucked in is scanned no finer. */
export function checkScan(
  context: CameraContext,
  camera: readonly CameraFrame[],
  placement: ReadonlyMap<string, readonly PlacementFrame[]>,
  places: { readonly field: (frame: number) => Field; readonly level: (name: string) => Field['span'] },
  report: Report,
): void {
  const { settings } = context;
  const enoughMm = (settings.output.width * 25.4) / settings.scanDpi;
  let least: Smallest = { widthMm: Infinity, frame: 0, level: null };
  for (const seen of camera) {
    if (seen.width < least.widthMm - 1e-9) least = { widthMm: seen.width, frame: seen.frame, level: null };
  }
  for (const level of context.levels) {
    for (const at of placement.get(level.name) ?? []) {
      const widthMm = camera[at.frame - 1]!.width / at.scale;
      if (widthMm < least.widthMm - 1e-9 && level.shown(at.frame)) {
        least = { widthMm, frame: at.frame, level: level.name };
      }
    }
  }
  const { widthMm } = settings.field;
  if (least.widthMm >= enoughMm - 1e-6 || widthMm < enoughMm) return;
  const field = places.field(least.frame);
  report(
    diagnose(
      'scan-enlarged',
      least.level === null ? field.span : places.level(least.level),
      {
        level: least.level,
        share: least.widthMm / widthMm,
        frame: least.frame,
        dpi: settings.scanDpi,
        enough: enoughMm / widthMm,
        pixels: settings.output.width,
      },
      { notes: [{ note: 'enough-dpi', dpi: Math.ceil((settings.output.width * 25.4) / least.widthMm) }] },
    ),
  );
}
