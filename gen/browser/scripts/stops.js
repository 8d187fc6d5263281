// How many things the Tab key must reach: everything that can be used, is shown,
// and is not taken out of the order. A group of radio buttons is one stop.
(() => {
  const radios = new Set();
  return [...document.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex='0'], [contenteditable='true']")]
    .filter((el) => {
      if (el.disabled || el.type === "hidden" || el.tabIndex < 0 || el.closest("[inert]")) return false;
      if (!el.checkVisibility({ visibilityProperty: true })) return false;
      if (el.tagName === "SUMMARY" && el.parentElement.querySelector("summary") !== el) return false;
      if (el.type === "radio") {
        const key = (el.form ? el.form.id : "") + "/" + el.name;
        if (radios.has(key)) return false;
        radios.add(key);
      }
      return true;
    }).length;
})()
