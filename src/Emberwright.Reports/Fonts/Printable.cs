using System.Text;

namespace Emberwright.Reports.Fonts;

/// <summary>
/// Makes any text fit to print: composes accents, turns exotic spaces into plain ones, drops invisible marks,
/// and puts a visible box (U+FFFD) where the font has no letter. It never throws and never shortens what can be read.
/// </summary>
public static class Printable
{
    /// <summary>The text as both weights can draw it.</summary>
    /// <param name="text">Any text, also with lone surrogates; null gives an empty text.</param>
    public static string Text(string? text)
    {
        if (string.IsNullOrEmpty(text)) return "";
        var made = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Drop(rune)) continue;
            if (rune.IsBmp && made.Length > 0 && Accents.Join(made[^1], (char)rune.Value) is { } joined) made[^1] = joined;
            else made.Append(Draw(rune));
        }

        return made.ToString();
    }

    /// <summary>The characters of a text that cannot be drawn, each once, in order of appearance.</summary>
    public static IEnumerable<Rune> Missing(string? text) =>
        (text ?? "").EnumerateRunes().Where(r => !Drop(r) && Draw(r) == "\uFFFD").Distinct();

    private static string Draw(Rune rune)
    {
        if (Typeface.Regular.Covers(rune) && Typeface.SemiBold.Covers(rune)) return rune.ToString();
        return rune.Value switch
        {
            '\n' or '\r' or '\t' or 0x2028 or 0x2029 => " ",
            0x202F or 0x2007 => "\u00A0",
            >= 0x2000 and <= 0x200A or 0x205F or 0x3000 => " ",
            0x2043 => "•",
            0x2103 => "°C",
            0x2109 => "°F",
            _ => "\uFFFD",
        };
    }

    // Zero-width marks, direction marks, soft hyphen, variation selectors: nothing to see.
    private static bool Drop(Rune rune) => rune.Value is 0xAD or 0x34F or 0x61C or >= 0x200B and <= 0x200F
        or >= 0x202A and <= 0x202E or >= 0x2060 and <= 0x2069 or 0xFEFF or >= 0xFE00 and <= 0xFE0F
        or (< 0x20 and not ('\n' or '\r' or '\t')) or (>= 0x7F and < 0xA0);
}
