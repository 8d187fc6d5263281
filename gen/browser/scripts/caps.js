// The smallest capitals of a wall chart's heading and table cells, in mm on
// paper, and what the chart's style promises (its custom property --cap).
(() => {
  const pen = document.createElement("canvas").getContext("2d");
  const found = [...document.querySelectorAll("h1, td, th[scope=row], th[scope=col]:not(.group)")].flatMap((el) => {
    const walk = document.createTreeWalker(el, NodeFilter.SHOW_TEXT);
    const texts = [];
    while (walk.nextNode()) {
      const text = walk.currentNode.data.trim(), p = walk.currentNode.parentElement;
      if (text.length && !p.closest("small, svg, .unseen") && p.checkVisibility()) texts.push([p, text]);
    }
    return texts;
  }).map(([el, text]) => {
    const s = getComputedStyle(el);
    // Measured ten times as large: small letters are fitted to whole pixels.
    pen.font = `${s.fontStyle} ${s.fontWeight} ${10 * parseFloat(s.fontSize)}px ${s.fontFamily}`;
    return { text, mm: pen.measureText("H").actualBoundingBoxAscent / 10 * 25.4 / 96 };
  });
  found.sort((a, b) => a.mm - b.mm);
  const promised = parseFloat(getComputedStyle(document.documentElement).getPropertyValue("--cap"));
  return { promised: Number.isNaN(promised) ? 0 : promised, smallest: found.length ? found[0].mm : 0, text: found.length ? found[0].text : "" };
})()
