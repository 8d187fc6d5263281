// Contrast of words and lines in drawings with what is painted under them, in the
// scheme that holds now: WCAG 2.2, criteria 1.4.3 (words, 4.5, large ones 3) and
// 1.4.11 (lines and areas, 3). The accessibility checker leaves SVG text out.
//
// Painted under is what stands before it in the document and covers the place, and
// last the page. A halo, a stroke painted before the letters, is their ground. Of
// a pattern the inks and the ground between them count, the worst of all. What a
// <use> shows is not looked into: no words stand on it.
(() => {
  const { read, over, ratio, behind, hex } = window.__colours;
  const faults = new Set();
  const unpainted = "defs, symbol, pattern, clipPath, mask, marker, linearGradient, radialGradient";
  const name = (el) => el.tagName + [...el.classList].map((c) => "." + c).join("");

  const opacity = (el) => {
    let o = 1;
    for (let p = el; p; p = p.parentElement) o *= parseFloat(getComputedStyle(p).opacity);
    return o;
  };
  // The colours of a fill or a stroke, and whether they cover all of it.
  const paint = (el, style, kind) => {
    const value = style[kind], thin = parseFloat(style[kind + "Opacity"]) * opacity(el);
    if (value === "none" || thin === 0) return { colours: [], whole: true };
    const link = value.match(/url\("?#([^")]+)/);
    if (!link) {
      const c = read(value);
      if (!c) faults.add(`${name(el)} has a ${kind} that cannot be read: ${value}`);
      return { colours: c ? [[c[0], c[1], c[2], c[3] * thin]] : [], whole: true };
    }
    const inks = [...document.getElementById(link[1]).querySelectorAll("*")].flatMap((p) => {
      const s = getComputedStyle(p);
      return p.tagName === "stop" ? [s.stopColor] : [s.fill, s.stroke];
    }).map(read).filter(Boolean).map((c) => [c[0], c[1], c[2], c[3] * thin]);
    return { colours: inks, whole: false };
  };
  const lay = (grounds, p) => p.colours.length === 0 ? grounds
    : grounds.flatMap((g) => p.colours.map((c) => over(c, g)).concat(p.whole ? [] : [g]));

  for (const svg of document.querySelectorAll("svg")) {
    if (svg.ownerSVGElement || !svg.checkVisibility({ visibilityProperty: true })) continue;
    const page = behind(svg);
    const shapes = [...svg.querySelectorAll("path, rect, circle, ellipse, line, polyline, polygon")]
      .filter((el) => !el.closest(unpainted) && el.checkVisibility({ visibilityProperty: true }))
      .map((el) => {
        const style = getComputedStyle(el), toScreen = el.getScreenCTM();
        const fill = el.tagName === "line" ? { colours: [], whole: true } : paint(el, style, "fill");
        const stroke = parseFloat(style.strokeWidth) > 0 ? paint(el, style, "stroke") : { colours: [], whole: true };
        const box = el.getBoundingClientRect(), edge = 1 + parseFloat(style.strokeWidth) * Math.hypot(toScreen.a, toScreen.b) / 2;
        return { el, fill, stroke, toScreen, back: toScreen.inverse(), box, edge };
      })
      .filter((s) => s.fill.colours.length || s.stroke.colours.length);
    const near = (s, box) => s.box.left - s.edge <= box.right && s.box.right + s.edge >= box.left && s.box.top - s.edge <= box.bottom && s.box.bottom + s.edge >= box.top;
    // What is painted at a point of the screen by these shapes.
    const groundAt = (x, y, under) => under.reduce((grounds, s) => {
      const at = new DOMPoint(x, y).matrixTransform(s.back);
      if (s.fill.colours.length && s.el.isPointInFill(at)) grounds = lay(grounds, s.fill);
      if (s.stroke.colours.length && s.el.isPointInStroke(at)) grounds = lay(grounds, s.stroke);
      return grounds;
    }, [page]);

    // Words: the middle, and a net of points, for a line may run through them. A
    // ground under fewer than one point in thirty only touches them.
    const walk = document.createTreeWalker(svg, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const words = walk.currentNode.data.trim(), el = walk.currentNode.parentElement;
      if (!words || el.closest("title, desc, " + unpainted) || !el.checkVisibility({ visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(walk.currentNode);
      const box = range.getBoundingClientRect();
      if (box.width === 0) continue;
      const style = getComputedStyle(el), html = !(el instanceof SVGElement);
      const ctm = (html ? el.closest("foreignObject") : el).getScreenCTM(), scale = Math.hypot(ctm.a, ctm.b);
      const ink = html ? { colours: [read(style.color)], whole: true } : paint(el, style, "fill");
      const halo = !html && style.paintOrder.startsWith("stroke") && parseFloat(style.strokeWidth) * scale >= 3 ? paint(el, style, "stroke") : { colours: [], whole: true };
      const under = shapes.filter((s) => s.el.compareDocumentPosition(el) & Node.DOCUMENT_POSITION_FOLLOWING && near(s, box));
      const seen = new Map();
      const columns = under.length ? 40 : 1, rows = under.length ? 3 : 1;
      for (let i = 0; i < columns; i++) {
        for (let j = 0; j < rows; j++) {
          // Letters fill the middle of a line's height.
          const x = box.left + box.width * (i + 0.5) / columns, y = box.top + box.height * (rows === 1 ? 0.5 : 0.35 + 0.15 * j);
          for (const g of lay(groundAt(x, y, under), halo)) seen.set(hex(g), { g, n: (seen.get(hex(g)) || { n: 0 }).n + 1 });
        }
      }
      const size = parseFloat(style.fontSize) * scale;
      const want = size >= 24 || (size >= 18.66 && parseFloat(style.fontWeight) >= 700) ? 3 : 4.5;
      for (const { g, n } of seen.values()) {
        if (n * 30 < columns * rows) continue;
        for (const c of ink.colours) {
          const has = ratio(over(c, g), g);
          if (has < want) faults.add(`“${words}” in ${name(svg)} has a contrast of ${has.toFixed(2)}, ${hex(over(c, g))} on ${hex(g)}, want ${want}`);
        }
      }
    }

    // Lines and areas: somewhere along its edge each must stand out. What guides the
    // eye behind a drawing (class grid) carries no meaning of its own. An area in just
    // the ground's colour, without a line, clears a place for what follows, and a line
    // drawn on a shape of just its own colour is meant to be one with it.
    shapes.forEach((s, i) => {
      if (s.el.classList.contains("grid")) return;
      const length = s.el.getTotalLength();
      if (length === 0) return;
      const under = shapes.slice(0, i).filter((o) => near(o, s.box));
      let best = 0, text = "", drawnOn = false;
      for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
        const at = new DOMPoint(s.el.getPointAtLength(length * part).x, s.el.getPointAtLength(length * part).y).matrixTransform(s.toScreen);
        for (const g of groundAt(at.x, at.y, under)) {
          drawnOn ||= hex(g) !== hex(page);
          for (const c of s.stroke.colours.concat(s.fill.colours)) {
            const has = ratio(over(c, g), g);
            if (has > best) { best = has; text = `${hex(over(c, g))} on ${hex(g)}`; }
          }
        }
        if (best >= 3) return;
      }
      if (best < 1.001 && (drawnOn || s.stroke.colours.length === 0)) return;
      faults.add(`${name(s.el)} in ${name(svg)} has a contrast of ${best.toFixed(2)}, ${text}, want 3`);
    });
  }
  return [...faults].slice(0, 6);
})()
