/** A cut of so many lines: timelines of many lines, and words, marks, fields and moves between them. */
export function longCut(lines) {
  const levels = Math.max(2, Math.round(lines / 125));
  const seconds = Math.max(6, Math.round((lines * 0.5) / levels));
  const names = Array.from({ length: levels }, (_, i) => `L${i + 1}`);
  const out = [
    `cut 12 "Rooftop, dusk"`,
    `time ${seconds}+0`,
    `stack BG ${names.join(' ')}`,
    'phrase walk = 1-2-',
  ];
  for (const [i, name] of names.entries()) {
    out.push(`${name} "level ${i + 1}": on 2 1-2-3--4--5-`);
    let key = 6;
    for (let second = 1; second < seconds - 1; second++) {
      const kind = (second + i) % 3;
      if (kind === 0) out.push(' walk*3');
      else if (kind === 1) out.push(` ${key++}:1+0`);
      else out.push(` ${key++}{late}---${key++} on 4 ${key++}-- on 2 ${key++}:2`);
    }
    out.push(' x..');
  }
  const row = (i) => `${(i * 7) % (seconds - 1)}+${1 + (i % 24)}`;
  for (let i = 0; out.length < lines; i++) {
    const kind = i % 4;
    if (kind === 0) out.push(`mark m${i} ${row(i)}`, `note m${i} "looks up"`);
    else if (kind === 1) out.push(`voice "Nao" ${row(i)}..${seconds}+0 "Wait for me!"`);
    else if (kind === 2) out.push(`memo "No ${i}: wind from the left."`);
    else out.push(`field F${i} ${50 + (i % 40)}% at ${i % 30},${i % 20}  # kept for the layout`);
  }
  return `${out.slice(0, lines).join('\n')}\n`;
}
