/* Sends a form once however often it is tapped, and keeps the page when the network is away.
   Starts on every form with data-keep; its value is what to say when there is no connection. Nothing is stored. */
(() => {
  const PAUSE = 4000;                       // ms in which a second tap of the same button is taken for the first

  const forms = document.querySelectorAll("form[data-keep]");
  for (const form of forms) {
    const line = document.createElement("p");
    line.className = "mistake";
    line.setAttribute("role", "status");
    let sentAt = -PAUSE;
    const button = form.querySelector("button[type=submit]:last-of-type");
    (button ? button.parentNode : form).insertBefore(line, button);   // there before it speaks, or screen readers miss it

    form.addEventListener("submit", (event) => {
      if (!navigator.onLine) {
        event.preventDefault();             // the page stays, with every answer on it
        line.textContent = form.dataset.keep;
        return;
      }
      if (performance.now() - sentAt < PAUSE) {
        event.preventDefault();
        return;
      }
      sentAt = performance.now();
      line.textContent = "";
    });
    addEventListener("online", () => { line.textContent = ""; });
    addEventListener("pageshow", () => { sentAt = -PAUSE; });   // Back must find a form that can be sent
  }
})();
