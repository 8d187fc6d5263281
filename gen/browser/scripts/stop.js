// Describes where the keyboard is now, and what is wrong with it there.
(() => {
  const el = document.activeElement;
  if (!el || el === document.body || el === document.documentElement) return { number: -1, name: "", fault: "", fields: 0 };
  window.__stops ??= new Map();
  const known = window.__stops.has(el);
  if (!known) window.__stops.set(el, window.__stops.size);
  const s = getComputedStyle(el), box = el.getBoundingClientRect();
  const outlined = s.outlineStyle !== "none" && parseFloat(s.outlineWidth) >= 2 && !/^rgba\(.*, 0\)$/.test(s.outlineColor);
  const { read, over, ratio, behind } = window.__colours;
  // The outline against what it is drawn on, and the words against what they get as
  // their ground: WCAG 2.2, criteria 1.4.11 and 1.4.3.
  const around = behind(el.parentElement), ring = read(s.outlineColor), ink = read(s.color), own = behind(el);
  const rung = outlined && ring ? ratio(over(ring, around), around) : 21;
  const said = ink && el.textContent.trim() ? ratio(over(ink, own), own) : 21;
  let fault = "";
  if (!(outlined || s.boxShadow !== "none")) fault = "shows no focus (no outline of 2 px or more, no shadow)";
  else if (box.width < 1 || box.height < 1) fault = "has no size while it has the focus";
  else if (box.bottom <= 0 || box.right <= 0 || box.top >= innerHeight || box.left >= innerWidth) fault = "is outside the window while it has the focus";
  else if (!el.checkVisibility({ opacityProperty: true, visibilityProperty: true })) fault = "is invisible while it has the focus";
  else if (rung < 3) fault = `has an outline with a contrast of ${rung.toFixed(2)} while it has the focus, want 3`;
  else if (said < 4.5) fault = `has words with a contrast of ${said.toFixed(2)} while it has the focus, want 4.5`;
  // Fields inside one input: day, month, year, hour, minute, half of the day, and the calendar's button.
  const fields = ["date", "time", "datetime-local", "month", "week"].includes(el.type) ? 8 : 0;
  const label = (el.getAttribute("aria-label") || el.textContent || el.value || el.name || "").trim().replace(/\s+/g, " ").slice(0, 40);
  return { number: window.__stops.get(el), name: `${el.tagName.toLowerCase()}${el.id ? "#" + el.id : ""} “${label}”`, fault, fields };
})()
