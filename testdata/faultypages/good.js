document.getElementById("form")?.removeAttribute("hidden");
document.getElementById("press")?.addEventListener("click", () => { document.title = "pressed"; });
