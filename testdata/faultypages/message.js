console.log("still debugging");
