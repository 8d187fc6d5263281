document.querySelector("h1").setAttribute("style", "color: red");
