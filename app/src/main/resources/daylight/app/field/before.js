// Before one goes: what is in the truck is ticked in this browser, and whoever allows the work signs.

for (const ticks of document.querySelectorAll('[data-ticks]')) {
  const name = `daylight-ticks-${ticks.dataset.ticks}`;
  let ticked = [];
  try {
    ticked = JSON.parse(localStorage.getItem(name) ?? '[]');
  } catch (unreadable) {
    ticked = [];
  }
  const boxes = Array.from(ticks.querySelectorAll('input'));
  for (const box of boxes) {
    box.checked = ticked.includes(box.id);
    box.addEventListener('change', () => {
      const now = boxes.filter((one) => one.checked).map((one) => one.id);
      localStorage.setItem(name, JSON.stringify(now));
    });
  }
}

for (const pad of document.querySelectorAll('[data-pad]')) {
  const canvas = pad.querySelector('canvas');
  const field = pad.querySelector('input');
  const pen = canvas.getContext('2d');
  let drawing = false;

  const clear = () => {
    // White paper in any light, for the picture is kept and printed.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.strokeStyle = '#000';
    pen.lineWidth = 4;
    pen.lineCap = 'round';
    pen.lineJoin = 'round';
    field.value = '';
  };
  const at = (event) => {
    const box = canvas.getBoundingClientRect();
    return [
      ((event.clientX - box.left) * canvas.width) / box.width,
      ((event.clientY - box.top) * canvas.height) / box.height,
    ];
  };
  canvas.addEventListener('pointerdown', (event) => {
    canvas.setPointerCapture(event.pointerId);
    drawing = true;
    pen.beginPath();
    pen.moveTo(...at(event));
  });
  canvas.addEventListener('pointermove', (event) => {
    if (drawing) {
      pen.lineTo(...at(event));
      pen.stroke();
    }
  });
  for (const end of ['pointerup', 'pointercancel']) {
    canvas.addEventListener(end, () => {
      if (drawing) {
        drawing = false;
        field.value = canvas.toDataURL('image/png');
      }
    });
  }
  pad.querySelector('button').addEventListener('click', clear);
  clear();
  pad.hidden = false;
}
