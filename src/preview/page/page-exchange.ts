/** Puts a new drawing of a page in the place of the old one: what is alike stays, so that the browser lays out and paints only what differs. */

export function exchangePage(paper: Element, fresh: SVGElement): void {
  const old = paper.firstElementChild;
  if (old) exchange(old, fresh);
  else paper.append(document.importNode(fresh, true));
}

function exchange(old: Element, fresh: Element): void {
  if (old.isEqualNode(fresh)) return;
  if (old.nodeName !== fresh.nodeName) {
    old.replaceWith(document.importNode(fresh, true));
    return;
  }
  for (const { name } of [...old.attributes]) if (!fresh.hasAttribute(name)) old.removeAttribute(name);
  for (const { name, value } of fresh.attributes)
    if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  const before = [...old.childNodes];
  const now = [...fresh.childNodes];
  const least = Math.min(before.length, now.length);
  let head = 0;
  while (head < least && before[head]!.isEqualNode(now[head]!)) head++;
  let tail = 0;
  while (tail < least - head && before.at(-1 - tail)!.isEqualNode(now.at(-1 - tail)!)) tail++;
  const [gone, come] = [before.slice(head, before.length - tail), now.slice(head, now.length - tail)];
  if (gone.length === come.length) {
    for (const [i, node] of gone.entries()) exchangeNode(node, come[i]!);
    return;
  }
  const behind = before[before.length - tail] ?? null;
  for (const node of gone) node.remove();
  for (const node of come) old.insertBefore(document.importNode(node, true), behind);
}

function exchangeNode(old: ChildNode, fresh: ChildNode): void {
  if (old instanceof Element && fresh instanceof Element) exchange(old, fresh);
  else if (!old.isEqualNode(fresh)) old.replaceWith(document.importNode(fresh, true));
}
