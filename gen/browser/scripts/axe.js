// Runs axe, which stands in the page already, and returns its violations as lines.
axe.run(document, {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  resultTypes: ["violations"],
  preload: false, // it would ask for the style sheets again, which our policy forbids
}).then((r) => r.violations.flatMap((v) => v.nodes.slice(0, 3).map((n) =>
  `${v.id}: ${n.target.join(" ")}: ${(n.any.concat(n.all, n.none)[0] || {}).message || v.help}`)))
