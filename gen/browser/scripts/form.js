// Whether a form keeps inside its sheet: its parts over its foot, its foot inside
// the margin, no line too short to write on.
(() => {
  const faults = [];
  const sheet = document.querySelector(".form"), inside = sheet.getBoundingClientRect();
  const bottom = inside.bottom - parseFloat(getComputedStyle(sheet).paddingBottom);
  const right = inside.right - parseFloat(getComputedStyle(sheet).paddingRight);
  const foot = sheet.querySelector("footer").getBoundingClientRect();
  if (foot.bottom > bottom + 1) faults.push(`the foot reaches ${(foot.bottom - bottom).toFixed(1)} px into the margin`);
  for (const part of sheet.querySelectorAll("section, dl, header, .field, td, th")) {
    const box = part.getBoundingClientRect();
    const name = part.textContent.trim().slice(0, 30);
    if (box.bottom > foot.top + 1) faults.push(`“${name}” reaches ${(box.bottom - foot.top).toFixed(1)} px into the foot`);
    if (box.right > right + 1 || part.scrollWidth > part.clientWidth + 1) faults.push(`“${name}” is too wide`);
  }
  const mm = 96 / 25.4;
  for (const line of sheet.querySelectorAll(".field .line")) {
    const box = line.getBoundingClientRect(), ticks = line.parentElement.querySelector(".tick");
    if (box.height < 8 * mm || (!ticks && box.width < 25 * mm)) faults.push(`“${line.parentElement.textContent.trim()}” leaves ${(box.width / mm).toFixed(0)} × ${(box.height / mm).toFixed(0)} mm to write on`);
  }
  for (const cell of sheet.querySelectorAll(".write td:empty")) {
    const box = cell.getBoundingClientRect();
    if (box.width < 13.5 * mm || box.height < 9 * mm) { faults.push(`a cell of ${(box.width / mm).toFixed(0)} × ${(box.height / mm).toFixed(0)} mm is too small to write in`); break; }
  }
  return faults;
})()
