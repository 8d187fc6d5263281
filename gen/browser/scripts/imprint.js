// Whether a wall chart says which edition it is: stamp, day, sheet and shop, and has
// marks to cut along at its four corners.
(() => {
  const faults = [];
  const text = (what) => (document.querySelector(what) || { textContent: "" }).textContent.trim();
  if (!/^[A-Z0-9]{2}-[A-Z0-9]{2}$/.test(text(".imprint .code"))) faults.push(`the stamp is “${text(".imprint .code")}”`);
  const imprint = text(".imprint span");
  if (!/Revised \d{1,2} [A-Z][a-z]+ \d{4}\./.test(imprint)) faults.push(`no day in “${imprint}”`);
  if (!/sheet \d+ of \d+/.test(imprint)) faults.push(`no count of sheets in “${imprint}”`);
  const shop = document.title.split(" · ").pop();
  if (!shop || !imprint.startsWith(shop + ".")) faults.push(`“${shop}” is not named in “${imprint}”`);
  const crops = document.querySelector(".wall > .crops");
  const marks = crops ? getComputedStyle(crops).backgroundImage.split("linear-gradient").length - 1 : 0;
  if (marks !== 8) faults.push(`${marks} crop marks, want two at each corner`);
  return faults;
})()
