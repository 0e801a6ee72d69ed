/* "None" and "don't know" leave no other box ticked, and any other takes them away. The codes stand in data-alone on the
   fieldset or list. Without script the server says the same in words. */
(() => {
  for (const group of document.querySelectorAll("[data-alone]")) {
    const alone = group.dataset.alone.split(" ");
    group.addEventListener("change", ({ target }) => {
      if (target.type !== "checkbox" || !target.checked) return;
      for (const box of group.querySelectorAll("input[type=checkbox]")) {
        const clash = alone.includes(target.value) || alone.includes(box.value);
        if (box !== target && clash) box.checked = false;
      }
    });
  }
})();
