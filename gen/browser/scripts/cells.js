// Words of a table that stick out of their cell: they run into the next one's, or out
// of the table. Words only for those who listen, and in drawings, take no place.
(() => {
  const faults = new Set();
  const range = document.createRange();
  const unseen = (el, cell) => {
    for (; el !== cell; el = el.parentElement) {
      if (el instanceof SVGElement || getComputedStyle(el).clipPath !== "none") return true;
    }
    return false;
  };
  for (const cell of document.querySelectorAll("td, th")) {
    const outer = cell.getBoundingClientRect();
    if (outer.width <= 1 || !cell.textContent.trim() || !cell.checkVisibility({ visibilityProperty: true })) continue;
    const walk = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const text = walk.currentNode;
      if (!text.data.trim()) continue;
      range.selectNodeContents(text);
      const inner = range.getBoundingClientRect();
      const out = Math.max(outer.left - inner.left, inner.right - outer.right);
      if (out <= 2 || unseen(text.parentElement, cell)) continue;
      faults.add(`“${text.data.trim()}” sticks ${out.toFixed(0)} px out of its cell of ${outer.width.toFixed(0)} px in table.${cell.closest("table").className.replace(/ /g, ".")}`);
    }
  }
  return [...faults].slice(0, 3);
})()
