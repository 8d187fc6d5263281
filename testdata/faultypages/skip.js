document.getElementById("skipped").addEventListener("focus", (e) => { e.target.blur(); });
