// What a sheet of paper would lose, found while the window is as large as the
// sheet inside its margins and the medium is print.
(() => {
  const faults = [];
  const root = document.documentElement;
  const name = (el) => el.tagName.toLowerCase() + (el.id ? "#" + el.id : "") +
    (typeof el.className === "string" && el.className ? "." + el.className.trim().replace(/\s+/g, ".") : "");
  if (root.scrollWidth > root.clientWidth + 1) faults.push(`${root.scrollWidth} px wide on a sheet of ${root.clientWidth}: print would shrink it or cut it off`);
  for (const el of document.querySelectorAll("body *")) {
    if (el.closest("svg") && el.tagName !== "svg") continue;
    const s = getComputedStyle(el);
    if (s.display === "none" || s.display === "inline" || el.clientHeight === 0) continue;
    if (el.clientWidth <= 1 && el.clientHeight <= 1) continue; // only for those who listen
    const tails = 0.25 * parseFloat(s.fontSize); // letters may hang out of a tight line a little
    if (s.overflowY !== "visible" && el.scrollHeight > el.clientHeight + (el.childElementCount ? 1 : tails)) faults.push(`${name(el)} hides ${el.scrollHeight - el.clientHeight} px of its height`);
    if (s.overflowX !== "visible" && el.scrollWidth > el.clientWidth + 1) faults.push(`${name(el)} hides ${el.scrollWidth - el.clientWidth} px of its width`);
  }
  return faults;
})()
