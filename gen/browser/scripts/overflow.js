// What sticks out to the right of the window: the page scrolls sideways then.
(() => {
  const width = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= width && document.body.scrollWidth <= width) return [];
  const inScroller = (el) => {
    for (let p = el.parentElement; p && p !== document.body; p = p.parentElement) {
      if (getComputedStyle(p).overflowX !== "visible") return true;
    }
    return false;
  };
  const name = (el) => el.tagName.toLowerCase() + (el.id ? "#" + el.id : "") +
    (typeof el.className === "string" && el.className ? "." + el.className.trim().replace(/\s+/g, ".") : "");
  const guilty = [...document.querySelectorAll("body *")]
    .filter((el) => el.getBoundingClientRect().right > width + 0.5 && !inScroller(el))
    .map((el) => `${name(el)} ends at ${Math.round(el.getBoundingClientRect().right)} of ${width}`);
  return guilty.length ? guilty.slice(-3) : [`the page is ${document.documentElement.scrollWidth} wide in a window of ${width}`];
})()
