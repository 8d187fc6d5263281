document.querySelector("#nobody").textContent = "x"; // nobody has this id
