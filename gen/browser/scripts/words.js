// The words that must be on paper as words: of each sheet of a wall chart its title,
// its stamp, and the names of its first and last row.
[...document.querySelectorAll(".wall")].flatMap((sheet) => {
  const rows = [...sheet.querySelectorAll("tbody th")];
  const first = (el) => [...el.childNodes].find((n) => n.textContent.trim());
  return [document.querySelector("h1"), ...sheet.querySelectorAll(".imprint .code"), ...rows.slice(0, 1), ...rows.slice(-1)]
    .filter(Boolean).map((el) => first(el).textContent.trim());
})
