/** Tracks to what is printed and exported: where camera and levels are on each frame. */

import type { Settings } from '../../shot/settings.js';
import type { CameraTracks, LevelTracks } from './camera-tracks.js';
import { clockwise, counterClockwise, turnOf } from './plane-turns.js';
import type { CameraFrame, PlacementFrame } from './solved-camera.js';

export function cameraFrames(c: CameraTracks, length: number, settings: Settings): CameraFrame[] {
  const standard = settings.field.widthMm;
  return Array.from({ length }, (_, index) => {
    const f = index + 1;
    const width = c.width[f]!;
    return {
      frame: f,
      x: c.baseX[f]! + c.goneX[f]! + c.shakeX[f]!,
      y: c.baseY[f]! + c.goneY[f]! + c.shakeY[f]!,
      width,
      percent: (width / standard) * 100,
      field: (width / standard) * settings.fields,
      rotation: c.turn[f]!,
    };
  });
}

/**
 * A point q of the artwork lies at P = home + (x, y) + scale · R · q; on screen at (W/w) · Rcam⁻¹ · (P − c).
 * The way that a level shares with the camera is taken out before the difference is made, so that a follow and the pull the
 * other way are the same on screen to the last digit.
 */
export function placementFrames(
  t: LevelTracks,
  c: CameraTracks,
  camera: readonly CameraFrame[],
  standard: number,
): PlacementFrame[] {
  return camera.map((seen) => {
    const f = seen.frame;
    const scale = t.scale[f]!;
    const turn = turnOf(t.turn[f]!);
    const scaled = clockwise(turn, t.scaleOffsetX[f]!, t.scaleOffsetY[f]!);
    const offsetX = t.turnOffsetX[f]! + scaled.x + t.swayX[f]!;
    const offsetY = t.turnOffsetY[f]! + scaled.y + t.swayY[f]!;
    const cameraTurn = turnOf(seen.rotation);
    const zoom = standard / seen.width;
    if (t.level.carry) {
      const { xMm, yMm } = t.level.homeMm;
      const own = clockwise(
        cameraTurn,
        xMm + t.slideX[f]! + t.pullX[f]! + offsetX,
        yMm + t.slideY[f]! + t.pullY[f]! + offsetY,
      );
      const x = seen.x + own.x / zoom - xMm;
      const y = seen.y + own.y / zoom - yMm;
      const screen = counterClockwise(cameraTurn, x - seen.x, y - seen.y);
      return {
        frame: f,
        x,
        y,
        scale: scale / zoom,
        rotation: t.turn[f]! + seen.rotation,
        screenX: zoom * screen.x + 0,
        screenY: zoom * screen.y + 0,
      };
    }
    const alongX = t.pullX[f]! + t.sharedX[f]!;
    const alongY = t.pullY[f]! + t.sharedY[f]!;
    const apartX = t.slideX[f]! - c.baseX[f]! - c.shakeX[f]! + (alongX - c.goneX[f]!) + offsetX;
    const apartY = t.slideY[f]! - c.baseY[f]! - c.shakeY[f]! + (alongY - c.goneY[f]!) + offsetY;
    const screen = counterClockwise(cameraTurn, apartX, apartY);
    return {
      frame: f,
      x: t.slideX[f]! + alongX + offsetX + 0,
      y: t.slideY[f]! + alongY + offsetY + 0,
      scale,
      rotation: t.turn[f]!,
      screenX: zoom * screen.x + 0,
      screenY: zoom * screen.y + 0,
    };
  });
}
