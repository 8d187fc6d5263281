// Arithmetic with colours, for the other scripts: what is painted over what, and
// the ratio of two luminances (WCAG 2.2, definition of contrast ratio).
window.__colours ??= (() => {
  // "rgb(1, 2, 3)" and "rgba(1, 2, 3, 0.4)" are what computed styles hold.
  const read = (text) => {
    const n = (text.match(/^rgba?\(([^)]*)\)$/) || ["", ""])[1].split(/[ ,/]+/).filter(Boolean).map(parseFloat);
    return n.length >= 3 ? [n[0], n[1], n[2], n.length > 3 ? n[3] : 1] : null;
  };
  // One colour on an opaque ground.
  const over = (top, under) => [0, 1, 2].map((i) => top[i] * top[3] + under[i] * (1 - top[3])).concat(1);
  const light = (c) => {
    const [r, g, b] = c.slice(0, 3).map((v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (a, b) => {
    const [hi, lo] = [light(a), light(b)].sort((x, y) => y - x);
    return (hi + 0.05) / (lo + 0.05);
  };
  // The page behind an element: its own background and those of what holds it,
  // down to the first that nothing shows through.
  const behind = (el) => {
    const layers = [];
    for (; el; el = el.parentElement) {
      const c = read(getComputedStyle(el).backgroundColor);
      if (c && c[3] > 0) layers.unshift(c);
      if (c && c[3] === 1) break;
    }
    return layers.reduce((under, top) => over(top, under), [255, 255, 255, 1]);
  };
  const hex = (c) => "#" + c.slice(0, 3).map((v) => Math.round(v).toString(16).padStart(2, "0")).join("");
  return { read, over, ratio, behind, hex };
})();
