/* "None" and "don't know" leave no other box ticked, and any other takes them away. The codes stand in data-alone on the
   fieldset or list; "don't know" of a list within a list speaks of that one alone. Without script the server says the same in words. */
(() => {
  for (const group of document.querySelectorAll("[data-alone]")) {
    const codes = group.dataset.alone.split(" ");
    const own = (box) => box.closest("[data-alone]") === group;
    const alone = (box) => own(box) && codes.includes(box.value);
    const apart = (box) => !own(box) && box.value === "dont-know";
    group.addEventListener("change", ({ target }) => {
      if (target.type !== "checkbox" || !target.checked) return;
      for (const box of group.querySelectorAll("input[type=checkbox]")) {
        const clash = (alone(target) && !apart(box)) || (alone(box) && !apart(target));
        if (box !== target && clash) box.checked = false;
      }
    });
  }
})();
