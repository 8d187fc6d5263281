// What is wrong with the page while scripts are off.
(() => {
  const faults = [];
  const main = document.querySelector("main");
  if (!main || main.innerText.trim().length < 20) faults.push("without script the page holds no text");
  const dead = [...document.querySelectorAll("button, input, select, textarea")]
    .filter((el) => !el.closest("form[action]") && el.checkVisibility({ visibilityProperty: true }) && !(el.type === "checkbox" || el.type === "radio"));
  for (const el of dead.slice(0, 3)) faults.push(`without script ${el.tagName.toLowerCase()}#${el.id} is shown and does nothing`);
  return faults;
})()
