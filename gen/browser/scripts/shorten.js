// Removes elements past the nth of the same name and class under one parent;
// returns how many.
((most) => {
  let removed = 0;
  for (const parent of document.querySelectorAll("body, body *")) {
    if (parent.childElementCount <= most) continue;
    const seen = new Map();
    for (const el of [...parent.children]) {
      const make = el.tagName + "." + (el.getAttribute("class") || "");
      const n = (seen.get(make) || 0) + 1;
      seen.set(make, n);
      if (n > most) { el.remove(); removed++; }
    }
  }
  return removed;
})(%d)
