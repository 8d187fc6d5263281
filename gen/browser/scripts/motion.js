// What moves although the reader asked for less motion.
(() => {
  const long = (v) => v.split(",").some((d) => parseFloat(d) * (d.trim().endsWith("ms") ? 1 : 1000) > 1);
  const name = (el) => el.tagName.toLowerCase() + (el.id ? "#" + el.id : "");
  return [...document.querySelectorAll("*")].filter((el) => {
    const s = getComputedStyle(el);
    return long(s.transitionDuration) || (s.animationName !== "none" && long(s.animationDuration));
  }).map((el) => `${name(el)} moves although less motion is asked for`).slice(0, 3);
})()
