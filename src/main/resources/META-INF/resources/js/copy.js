/* Copies a field's text: <button type="button" data-copy="id of the field" data-copied="words">. Without script the field can be selected by hand. */
(() => {
  for (const button of document.querySelectorAll("[data-copy]")) {
    const field = document.getElementById(button.dataset.copy);
    const words = button.textContent;
    button.hidden = false;
    button.addEventListener("click", async () => {
      field.select();
      try {
        await navigator.clipboard.writeText(field.value);
      } catch {
        document.execCommand("copy");       // no clipboard off https
      }
      button.textContent = button.dataset.copied;
      setTimeout(() => { button.textContent = words; }, 3000);
    });
  }
})();
