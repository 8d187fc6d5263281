fetch("http://192.0.2.1/count").catch(() => {});
