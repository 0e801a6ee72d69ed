/* The mark: draw it or type it. Points are kept between 0 and 1 of the box, to four places, without times.
   Without script the page offers typing alone, so everything here is an addition. Starts on [data-sign]. */
(() => {
  const MOST = 5000;                        // points; the server refuses more
  const NEAR = 0.002;                       // a point nearer than this to the last adds nothing

  for (const box of document.querySelectorAll("[data-sign]")) start(box);

  function start(box) {
    const tabs = box.querySelector("[data-sign-tabs]");
    const pad = box.querySelector("[data-sign-pad]");
    const typed = box.querySelector("[data-sign-typed]");
    const canvas = pad.querySelector("canvas");
    const kept = pad.querySelector("[data-sign-strokes]");
    const strokes = read(kept.value);
    let current = null;

    box.querySelector("[data-sign-without]").remove();
    tabs.hidden = tabs.disabled = false;
    tabs.addEventListener("change", turn);
    pad.querySelector("[data-sign-clear]").addEventListener("click", () => {
      strokes.length = 0;
      keep();
    });
    canvas.addEventListener("pointerdown", (event) => {
      if (!event.isPrimary || event.button > 0) return;
      canvas.setPointerCapture(event.pointerId);
      current = [];
      strokes.push(current);
      add(event);
    });
    canvas.addEventListener("pointermove", (event) => {
      if (!current) return;
      const events = event.getCoalescedEvents ? event.getCoalescedEvents() : [event];
      for (const each of events.length ? events : [event]) add(each);
    });
    for (const end of ["pointerup", "pointercancel"]) canvas.addEventListener(end, () => { current = null; keep(); });
    new ResizeObserver(paint).observe(canvas);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", paint);
    turn();

    function turn() {
      const draws = tabs.querySelector("input:checked")?.value === "drawn";
      pad.hidden = !draws;
      typed.hidden = draws;
      if (draws) paint();
    }

    function add(event) {
      if (!current || strokes.reduce((sum, stroke) => sum + stroke.length, 0) >= MOST) return;
      const area = canvas.getBoundingClientRect();
      const point = [(event.clientX - area.x) / area.width, (event.clientY - area.y) / area.height].map(inside);
      const last = current[current.length - 1];
      if (last && Math.hypot(point[0] - last[0], point[1] - last[1]) < NEAR) return;
      current.push(point);
      paint();
    }

    function keep() {
      kept.value = strokes.length ? JSON.stringify(strokes) : "";
      paint();
    }

    function paint() {
      const scale = devicePixelRatio || 1;
      const { width, height } = canvas.getBoundingClientRect();
      if (!width) return;
      canvas.width = width * scale;
      canvas.height = height * scale;
      const pen = canvas.getContext("2d");
      pen.scale(scale, scale);
      pen.lineWidth = 2.5;
      pen.lineCap = pen.lineJoin = "round";
      pen.strokeStyle = pen.fillStyle = getComputedStyle(canvas).color;
      for (const stroke of strokes) line(pen, stroke.map(([x, y]) => [x * width, y * height]));
    }
  }

  /* Through the middles of the points, so that a quick hand still gives a round line. A tap is a dot. */
  function line(pen, points) {
    if (!points.length) return;
    pen.beginPath();
    if (points.length === 1) {
      pen.arc(points[0][0], points[0][1], 1.6, 0, 7);
      pen.fill();
      return;
    }
    pen.moveTo(...points[0]);
    for (let i = 1; i < points.length - 1; i++)
      pen.quadraticCurveTo(...points[i], (points[i][0] + points[i + 1][0]) / 2, (points[i][1] + points[i + 1][1]) / 2);
    pen.lineTo(...points[points.length - 1]);
    pen.stroke();
  }

  function inside(share) {
    return Math.round(Math.min(1, Math.max(0, share)) * 1e4) / 1e4;
  }

  function read(text) {
    try {
      const found = JSON.parse(text);
      return Array.isArray(found) ? found : [];
    } catch {
      return [];
    }
  }
})();
