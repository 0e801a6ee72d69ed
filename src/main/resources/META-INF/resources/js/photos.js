/* Sends photos as they are chosen: made small on the phone first, one after another, each exactly once however often the line breaks.
   Starts on every form with data-photo, whose data holds the words. Without script the same forms send the file as it is; where this browser
   cannot draw it, it goes as it is here too. Nothing is kept on the phone. */
(() => {
  const LONGEST = 1600;                     // px a side: small print on a box can still be read
  const QUALITY = 0.85;
  const PATIENCE = 180000;                  // ms for one photo on a bad line
  const PAUSES = [3000, 10000, 30000];      // ms before it is tried again
  let turn = Promise.resolve();

  const small = async (file) => {
    try {
      const image = await createImageBitmap(file, { imageOrientation: "from-image" });
      const scale = Math.min(1, LONGEST / Math.max(image.width, image.height));
      const canvas = document.createElement("canvas");
      canvas.width = Math.max(1, Math.round(image.width * scale));
      canvas.height = Math.max(1, Math.round(image.height * scale));
      const pen = canvas.getContext("2d");
      pen.fillStyle = "#fff";
      pen.fillRect(0, 0, canvas.width, canvas.height);
      pen.drawImage(image, 0, 0, canvas.width, canvas.height);
      image.close();
      return await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY)) ?? file;
    } catch {
      return file;
    }
  };

  /* The page that answers; nothing when the line broke or the server asks for patience. */
  const sent = (form, body, bar) => new Promise((answer) => {
    const request = new XMLHttpRequest();
    request.open("POST", form.action);
    request.setRequestHeader("Accept", "text/html");
    request.responseType = "document";
    request.timeout = PATIENCE;
    request.upload.onprogress = (now) => { if (now.lengthComputable) bar.value = now.loaded / now.total; };
    request.onload = () => answer([429, 502, 503, 504].includes(request.status) ? null : request.response);
    request.onerror = request.ontimeout = request.onabort = () => answer(null);
    request.send(body);
  });

  const pause = (time) => new Promise((done) => {
    const on = () => { clearTimeout(timer); removeEventListener("online", on); done(); };
    const timer = setTimeout(on, time);
    addEventListener("online", on);
  });

  /* The same form again and again is one photo: the server knows it by its name. */
  const tried = async (form, body, bar, say) => {
    for (let at = 0; ; at++) {
      say(form.dataset.sending);
      const page = await sent(form, body, bar);
      if (page || at === PAUSES.length) return page;
      say(form.dataset.waiting);
      bar.value = 0;
      await pause(PAUSES[at]);
    }
  };

  /* What stands on the page that answers takes the place of what stands here. A page of another kind is shown as it would be without script. */
  const show = (form, page) => {
    const here = form.closest("section");
    const found = page.getElementById(here.id);
    if (!found) return form.submit();
    const fresh = document.importNode(found, true);
    const held = here.contains(document.activeElement) || document.activeElement === document.body;
    here.replaceWith(fresh);
    document.getElementById("arrived").textContent = page.getElementById("arrived").textContent;
    fresh.querySelectorAll("form[data-photo]").forEach(ready);
    const next = fresh.querySelector("[aria-invalid]") ?? fresh.querySelector("a, input[type=file]");
    if (held) next?.focus({ preventScroll: true });
  };

  const send = async (form) => {
    const bar = form.querySelector("progress");
    const said = form.querySelector("[role=status]");
    const parts = form.querySelectorAll(".field, button");
    const say = (words) => { if (said.textContent !== words) said.textContent = words; };
    const body = new FormData(form);
    body.set("photo", await small(form.elements.photo.files[0]), "photo.jpg");
    bar.value = 0;
    bar.parentNode.hidden = false;
    const page = await tried(form, body, bar, say);
    if (page) return show(form, page);
    bar.parentNode.hidden = true;
    say(form.dataset.lost);
    parts.forEach((part) => { part.hidden = part.matches("[data-camera]") && !coarse; });
    form.dataset.photo = "";
  };

  const coarse = matchMedia("(pointer: coarse)").matches;

  const ready = (form) => {
    const file = form.elements.photo;
    const camera = form.querySelector("[data-camera]");
    const go = form.querySelector("[type=submit]");
    const begin = () => {
      if (!file.files.length || form.dataset.photo) return;
      form.dataset.photo = "going";
      form.querySelectorAll(".field, button").forEach((part) => { part.hidden = true; });
      form.querySelector("[role=status]").textContent = form.dataset.sending;
      turn = turn.then(() => send(form)).catch(() => form.submit());
    };
    form.classList.add("alive");
    file.labels[0].className = "button";
    go.hidden = true;                       // it goes as soon as it is chosen
    camera.hidden = !coarse;
    camera.addEventListener("click", () => {
      file.setAttribute("capture", "environment");
      file.click();
    });
    file.addEventListener("pointerdown", () => file.removeAttribute("capture"));
    file.addEventListener("change", begin);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      begin();
    });
  };

  document.querySelectorAll("form[data-photo]").forEach(ready);
})();
