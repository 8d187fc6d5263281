document.getElementById("trap").addEventListener("keydown", (e) => { if (e.key === "Tab") e.preventDefault(); });
