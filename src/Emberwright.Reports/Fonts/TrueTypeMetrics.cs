using System.Buffers.Binary;
using System.Text;

namespace Emberwright.Reports.Fonts;

/// <summary>
/// The advance widths of a TrueType font by character, read from its own tables
/// (<c>head</c>, <c>hhea</c>, <c>hmtx</c>, <c>cmap</c> format 4; OpenType specification 1.9).
/// It measures, it does not draw.
/// </summary>
internal sealed class TrueTypeMetrics
{
    private readonly Dictionary<int, ushort> _advance = [];

    /// <summary>Reads the tables.</summary>
    /// <param name="name">The font's name, for messages.</param>
    /// <param name="file">The whole font file.</param>
    /// <exception cref="InvalidDataException">A table is missing or the character map has no format 4.</exception>
    public TrueTypeMetrics(string name, ReadOnlySpan<byte> file)
    {
        var head = Table(name, file, "head");
        var hhea = Table(name, file, "hhea");
        var hmtx = Table(name, file, "hmtx");
        UnitsPerEm = BinaryPrimitives.ReadUInt16BigEndian(head[18..]);
        Ascent = BinaryPrimitives.ReadInt16BigEndian(hhea[4..]) / (double)UnitsPerEm;
        Descent = -BinaryPrimitives.ReadInt16BigEndian(hhea[6..]) / (double)UnitsPerEm;
        var metrics = BinaryPrimitives.ReadUInt16BigEndian(hhea[34..]);
        foreach (var (character, glyph) in Characters(name, Table(name, file, "cmap")))
            _advance[character] = BinaryPrimitives.ReadUInt16BigEndian(hmtx[(4 * Math.Min(glyph, metrics - 1))..]);
    }

    /// <summary>Font units in one em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Height above the baseline, in em.</summary>
    public double Ascent { get; }

    /// <summary>Depth below the baseline, in em, positive.</summary>
    public double Descent { get; }

    /// <summary>True when the font draws this character.</summary>
    public bool Covers(Rune character) => _advance.ContainsKey(character.Value);

    /// <summary>Advance width of a text in em; a character the font lacks counts as U+FFFD.</summary>
    public double Width(string text)
    {
        var units = 0;
        foreach (var rune in text.EnumerateRunes())
            units += _advance.TryGetValue(rune.Value, out var w) ? w : _advance[0xFFFD];
        return units / (double)UnitsPerEm;
    }

    private static ReadOnlySpan<byte> Table(string name, ReadOnlySpan<byte> file, string tag)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(file[4..]);
        for (var i = 0; i < count; i++)
        {
            var record = file.Slice(12 + 16 * i, 16);
            if (Encoding.ASCII.GetString(record[..4]) == tag)
                return file.Slice((int)BinaryPrimitives.ReadUInt32BigEndian(record[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(record[12..]));
        }

        throw new InvalidDataException($"The font {name} has no table '{tag}'. Embed a complete TrueType file.");
    }

    private static List<(int Character, int Glyph)> Characters(string name, ReadOnlySpan<byte> cmap)
    {
        var subtables = BinaryPrimitives.ReadUInt16BigEndian(cmap[2..]);
        for (var i = 0; i < subtables; i++)
        {
            var sub = cmap[(int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(8 + 8 * i)..])..];
            if (BinaryPrimitives.ReadUInt16BigEndian(sub) == 4) return Segments(sub);
        }

        throw new InvalidDataException($"The font {name} has no character map of format 4. Embed a Unicode TrueType file.");
    }

    private static List<(int Character, int Glyph)> Segments(ReadOnlySpan<byte> sub)
    {
        var found = new List<(int, int)>();
        var twice = BinaryPrimitives.ReadUInt16BigEndian(sub[6..]);
        for (var s = 0; s < twice; s += 2)
        {
            var end = BinaryPrimitives.ReadUInt16BigEndian(sub[(14 + s)..]);
            var start = BinaryPrimitives.ReadUInt16BigEndian(sub[(16 + twice + s)..]);
            var delta = BinaryPrimitives.ReadUInt16BigEndian(sub[(16 + 2 * twice + s)..]);
            var at = 16 + 3 * twice + s;
            var offset = BinaryPrimitives.ReadUInt16BigEndian(sub[at..]);
            for (int c = start; c <= end && c < 0xFFFF; c++)
            {
                var glyph = offset == 0
                    ? (c + delta) & 0xFFFF
                    : BinaryPrimitives.ReadUInt16BigEndian(sub[(at + offset + 2 * (c - start))..]);
                if (offset != 0 && glyph != 0) glyph = (glyph + delta) & 0xFFFF;
                if (glyph != 0) found.Add((c, glyph));
            }
        }

        return found;
    }
}
