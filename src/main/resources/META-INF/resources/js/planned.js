/* What differs from the plan is marked while it is typed; the words "planned …" are on the page already. Without script the
   server marks it at the next answer. */
(() => {
  for (const field of document.querySelectorAll("input[data-planned]")) {
    const planned = field.defaultValue;
    const cell = field.closest(".cell");
    if (cell.classList.contains("differs")) continue;             // the server knows the plan better than what stood here
    field.addEventListener("input", () => cell.classList.toggle("differs", field.value.trim() !== planned));
  }
})();
