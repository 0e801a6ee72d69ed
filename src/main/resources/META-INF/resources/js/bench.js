/* The bench follows along on every device: the part marked data-live is asked for again every two seconds and taken over when its
   version changed. Clocks count on in between. When one is down the title says so, and a quiet tone sounds if somebody asked for it.
   Without script every page still works: "Look again" is a link. Nothing is kept. */
(() => {
  const EVERY = 2000;                       // ms between two looks
  let live = document.querySelector("[data-live]");
  if (!live) return;
  const title = document.title;
  const say = document.querySelector("[data-say]");
  const rung = new Set();
  const busy = new Set();
  let readAt = performance.now();
  let sound = null;

  const two = (number) => String(number).padStart(2, "0");

  const left = (clock) => Math.max(0, clock.dataset.left - Math.floor((performance.now() - readAt) / 1000));

  const tick = () => {
    let due = "";
    for (const clock of live.querySelectorAll("[data-left]")) {
      const seconds = left(clock);
      clock.textContent = two(Math.floor(seconds / 60)) + ":" + two(seconds % 60);
      clock.classList.toggle("due", seconds === 0);
      if (seconds > 0) {
        rung.delete(clock.dataset.clock);
        continue;
      }
      due = clock.dataset.due;
      if (!rung.has(clock.dataset.clock)) {
        rung.add(clock.dataset.clock);
        ring();
      }
    }
    document.title = due ? due + " · " + title : title;
  };

  /* Two soft tones, rising. */
  const ring = () => {
    if (!sound) return;
    [[0, 523], [0.35, 659]].forEach(([after, pitch]) => {
      const tone = sound.createOscillator();
      const volume = sound.createGain();
      const start = sound.currentTime + after;
      tone.frequency.value = pitch;
      volume.gain.setValueAtTime(0, start);
      volume.gain.linearRampToValueAtTime(0.12, start + 0.04);
      volume.gain.linearRampToValueAtTime(0, start + 0.3);
      tone.connect(volume).connect(sound.destination);
      tone.start(start);
      tone.stop(start + 0.32);
    });
  };

  for (const button of document.querySelectorAll("[data-sound]")) {
    if (!window.AudioContext) break;
    button.hidden = false;
    button.addEventListener("click", () => {
      sound = sound || new AudioContext();
      sound.resume();
      button.textContent = button.dataset.on;
      button.setAttribute("aria-pressed", "true");
      ring();
    });
  }

  /* Whoever is typing inside the part, or opened something in it, is not disturbed. */
  const inHand = () => live.contains(document.activeElement) && document.activeElement.matches("input, select, textarea")
    || live.querySelector("details[open] form") !== null;

  const take = (html) => {
    const next = new DOMParser().parseFromString(html, "text/html").querySelector("[data-live]");
    if (!next) {
      location.reload();                    // signed out, or the page is another now
      return;
    }
    readAt = performance.now();
    const changed = next.dataset.version !== live.dataset.version;
    if (changed && !inHand()) {
      const held = live.contains(document.activeElement) ? document.activeElement.value : null;
      live.replaceWith(next);
      live = next;
      if (held) [...live.querySelectorAll("button")].find((button) => button.value === held)?.focus();
      if (say) say.textContent = live.dataset.news;
    } else {
      for (const clock of live.querySelectorAll("[data-left]")) {
        const other = next.querySelector(`[data-clock="${clock.dataset.clock}"]`);
        if (other) clock.dataset.left = other.dataset.left;
      }
    }
    tick();
  };

  const look = async () => {
    if (busy.size > 0) return;
    try {
      const answer = await fetch(live.dataset.live, { headers: { Accept: "text/html" }, cache: "no-store" });
      if (answer.ok && busy.size === 0) take(await answer.text());
    } catch {
      // without a connection the clocks count on; the next look may find one
    }
  };

  /* A tap on something seen: sent once, and the page stays. */
  document.addEventListener("submit", async (event) => {
    const form = event.target;
    if (form.dataset.livePost === undefined) return;
    event.preventDefault();
    const tapped = event.submitter;
    if (!tapped || busy.has(tapped.value)) return;
    busy.add(tapped.value);
    const body = new URLSearchParams(new FormData(form));
    body.append(tapped.name, tapped.value);
    try {
      const answer = await fetch(form.action, { method: "POST", body, headers: { Accept: "text/html" } });
      busy.delete(tapped.value);
      if (answer.ok) take(await answer.text());
      else location.reload();
    } catch {
      busy.delete(tapped.value);
      if (say) {
        say.textContent = form.dataset.livePost;
        say.classList.remove("unseen");
      }
    }
  });

  setInterval(tick, 250);
  setInterval(look, EVERY);
  addEventListener("online", () => {
    if (say) say.classList.add("unseen");
    look();
  });
})();
