// Where a photo was taken, as a camera writes it: the GPS part of the Exif segment of a JPEG file.
// Source: Exif 2.32 (CIPA DC-008): tags 0x8825 GPS IFD; in it 1, 3 the letters N S E W, 2, 4 degrees, minutes, seconds as rationals.

/** "44.12345, -72.54321", or null. */
export function placeOf(buffer) {
    try { return read(new DataView(buffer)); } catch { return null; }
}

function read(file) {
    if (file.getUint16(0) !== 0xffd8) return null;
    let at = 2;
    while (file.getUint16(at) !== 0xffe1) {
        if (file.getUint8(at) !== 0xff || file.getUint16(at) === 0xffda) return null;
        at += 2 + file.getUint16(at + 2);
    }
    const tiff = at + 10; // marker, length, "Exif", two zeros
    const little = file.getUint16(tiff) === 0x4949;
    const u16 = o => file.getUint16(tiff + o, little), u32 = o => file.getUint32(tiff + o, little);
    const entries = ifd => new Map(Array.from({ length: u16(ifd) }, (_, n) => [u16(ifd + 2 + 12 * n), ifd + 10 + 12 * n]));
    const gps = entries(u32(4)).get(0x8825);
    if (gps === undefined) return null;
    const tags = entries(u32(gps));
    const degrees = (tag, sign, negative) => {
        const value = u32(tags.get(tag));
        const [d, m, s] = [0, 1, 2].map(n => u32(value + 8 * n) / u32(value + 8 * n + 4));
        return (d + m / 60 + s / 3600) * (String.fromCharCode(file.getUint8(tiff + tags.get(sign))) === negative ? -1 : 1);
    };
    const [north, east] = [degrees(2, 1, 'S'), degrees(4, 3, 'W')];
    return Number.isFinite(north) && Number.isFinite(east) ? `${north.toFixed(5)}, ${east.toFixed(5)}` : null;
}
