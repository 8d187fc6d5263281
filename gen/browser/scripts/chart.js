// Whether the parts of a wall chart stand one under another inside its margins:
// nothing over the foot, nothing outside, no word over another in the table.
(() => {
  const faults = [];
  if (!document.querySelector(".face > footer")) return faults; // laid out in another way
  const of = (what) => document.querySelector(what).getBoundingClientRect();
  const face = of(".face"), table = of(".face > table"), foot = of(".face > footer"), head = of(".face > header");
  if (head.bottom > table.top + 1) faults.push(`the title reaches ${(head.bottom - table.top).toFixed(1)} px into the table`);
  if (table.bottom > foot.top + 1) faults.push(`the table reaches ${(table.bottom - foot.top).toFixed(1)} px into the foot`);
  if (foot.bottom > face.bottom + 1) faults.push(`the foot reaches ${(foot.bottom - face.bottom).toFixed(1)} px into the margin`);
  const words = (el) => {
    const r = document.createRange();
    r.selectNodeContents(el);
    return r.getBoundingClientRect();
  };
  for (const box of document.querySelectorAll(".face h1, .face header p, .face th, .face td, .face footer p")) {
    if (box.querySelector(".unseen")) continue; // its words are not on the paper
    const outer = box.getBoundingClientRect(), inner = words(box);
    if (inner.left < outer.left - 1 || inner.right > outer.right + 1) faults.push(`“${box.textContent.trim()}” is ${inner.width.toFixed(0)} px wide, its place ${outer.width.toFixed(0)}`);
  }
  return faults;
})()
