// A signature drawn with finger, pen or mouse. What is kept is dark ink on white, whatever the theme, cut to what was drawn.
const idle = 900; // ms after the last stroke before it counts as signed

export function pad(canvas, listener) {
    const strokes = [];
    let stroke, waiting;

    const size = () => {
        const ratio = devicePixelRatio || 1;
        canvas.width = Math.round(canvas.clientWidth * ratio);
        canvas.height = Math.round(canvas.clientHeight * ratio);
        draw(canvas.getContext('2d'), strokes, ratio, 0, 0, getComputedStyle(canvas).color);
    };
    const at = event => [event.offsetX, event.offsetY];
    const down = event => {
        if (event.button > 0) return;
        canvas.setPointerCapture(event.pointerId);
        clearTimeout(waiting);
        strokes.push(stroke = [at(event)]);
        event.preventDefault();
    };
    const move = event => {
        if (!stroke) return;
        stroke.push(at(event));
        size();
    };
    const up = () => {
        if (!stroke) return;
        stroke = undefined;
        size();
        clearTimeout(waiting);
        waiting = setTimeout(async () => listener.invokeMethodAsync('Drawn', await picture(strokes)), idle);
    };
    canvas.addEventListener('pointerdown', down);
    canvas.addEventListener('pointermove', move);
    canvas.addEventListener('pointerup', up);
    canvas.addEventListener('pointercancel', up);
    const watch = new ResizeObserver(size);
    watch.observe(canvas);
    return {
        clear() { clearTimeout(waiting); strokes.length = 0; size(); },
        stop() { clearTimeout(waiting); watch.disconnect(); },
    };
}

function draw(context, strokes, scale, left, top, colour) {
    context.clearRect(0, 0, context.canvas.width, context.canvas.height);
    context.setTransform(scale, 0, 0, scale, -left * scale, -top * scale);
    context.strokeStyle = context.fillStyle = colour;
    context.lineWidth = 2.5;
    context.lineCap = context.lineJoin = 'round';
    for (const points of strokes) {
        context.beginPath();
        context.moveTo(...points[0]);
        for (const point of points) context.lineTo(...point);
        if (points.length === 1) context.lineTo(points[0][0] + .1, points[0][1]);
        context.stroke();
    }
    context.setTransform(1, 0, 0, 1, 0, 0);
}

async function picture(strokes) {
    const all = strokes.flat(), margin = 6;
    const left = Math.min(...all.map(p => p[0])) - margin, right = Math.max(...all.map(p => p[0])) + margin;
    const top = Math.min(...all.map(p => p[1])) - margin, bottom = Math.max(...all.map(p => p[1])) + margin;
    const paper = new OffscreenCanvas(Math.ceil(2 * (right - left)), Math.ceil(2 * (bottom - top)));
    const context = paper.getContext('2d');
    draw(context, strokes, 2, left, top, '#111');
    context.globalCompositeOperation = 'destination-over';
    context.fillStyle = '#fff';
    context.fillRect(0, 0, paper.width, paper.height);
    return new Uint8Array(await (await paper.convertToBlob({ type: 'image/png' })).arrayBuffer());
}
