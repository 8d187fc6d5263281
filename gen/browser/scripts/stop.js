// Describes where the keyboard is now, and what is wrong with it there.
(() => {
  const el = document.activeElement;
  if (!el || el === document.body || el === document.documentElement) return { number: -1, name: "", fault: "", fields: 0 };
  window.__stops ??= new Map();
  const known = window.__stops.has(el);
  if (!known) window.__stops.set(el, window.__stops.size);
  const s = getComputedStyle(el), box = el.getBoundingClientRect();
  const outlined = s.outlineStyle !== "none" && parseFloat(s.outlineWidth) >= 2 && !/^rgba\(.*, 0\)$/.test(s.outlineColor);
  let fault = "";
  if (!(outlined || s.boxShadow !== "none")) fault = "shows no focus (no outline of 2 px or more, no shadow)";
  else if (box.width < 1 || box.height < 1) fault = "has no size while it has the focus";
  else if (box.bottom <= 0 || box.right <= 0 || box.top >= innerHeight || box.left >= innerWidth) fault = "is outside the window while it has the focus";
  else if (!el.checkVisibility({ opacityProperty: true, visibilityProperty: true })) fault = "is invisible while it has the focus";
  // Fields inside one input: day, month, year, hour, minute, half of the day, and the calendar's button.
  const fields = ["date", "time", "datetime-local", "month", "week"].includes(el.type) ? 8 : 0;
  const label = (el.getAttribute("aria-label") || el.textContent || el.value || el.name || "").trim().replace(/\s+/g, " ").slice(0, 40);
  return { number: window.__stops.get(el), name: `${el.tagName.toLowerCase()}${el.id ? "#" + el.id : ""} “${label}”`, fault, fields };
})()
