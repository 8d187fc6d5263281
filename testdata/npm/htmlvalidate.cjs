// What the HTML validator checks in the handbook's pages. Each rule that is off
// has its reason beside it.
module.exports = {
  root: true,
  extends: ["html-validate:recommended", "html-validate:document", "html-validate:a11y"],
  rules: {
    "require-sri": "off", // browsers do not load scripts with a digest from files
    "valid-id": ["error", { relaxed: true }], // dots are allowed, and part of our names
    "prefer-native-element": "off", // a scrolling div with role=region is as good as a section
    "prefer-tbody": "off", // the browser adds it
    "form-dup-name": "off", // a date and the box “unknown” answer one question
    "wcag/h32": "off", // a form that answers as you choose has nothing to submit
    "long-title": "off", // about search engines
    "void-style": "off", // taste, from here down
    "no-trailing-whitespace": "off",
    "attribute-boolean-style": "off",
    "doctype-style": "off",
  },
};
