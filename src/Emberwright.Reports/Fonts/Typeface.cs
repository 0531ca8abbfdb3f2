using System.Text;

namespace Emberwright.Reports.Fonts;

/// <summary>
/// One weight of our text family: its file and its widths. Both writers measure with it,
/// so a picture's words take the same room on screen and on paper.
/// </summary>
public sealed class Typeface
{
    /// <summary>The name of the family, as style sheets and PDF files know it.</summary>
    public const string Family = "Emberwright Sans";

    private static readonly Lazy<Typeface> RegularFace = new(() => new Typeface("EmberwrightSans-Regular"));
    private static readonly Lazy<Typeface> SemiBoldFace = new(() => new Typeface("EmberwrightSans-SemiBold"));
    private readonly TrueTypeMetrics _metrics;

    private Typeface(string name)
    {
        Name = name;
        using var stream = typeof(Typeface).Assembly.GetManifestResourceStream(name + ".ttf")
            ?? throw new InvalidOperationException($"The font {name}.ttf is not embedded in Emberwright.Reports. Build the project with its Fonts folder.");
        File = new byte[stream.Length];
        stream.ReadExactly(File);
        _metrics = new TrueTypeMetrics(name, File);
        foreach (var sign in Required.EnumerateRunes())
            if (!_metrics.Covers(sign))
                throw new InvalidOperationException($"The font {name}.ttf lacks U+{sign.Value:X4} '{sign}', which our pages need. Embed a cut that has it.");
    }

    /// <summary>Signs no page can do without: minus, degree, ohm, subscript two, dashes, ellipsis, quotes, the box for a missing letter.</summary>
    public const string Required = "0123456789+−±×·°Ωµ₂–—…“”‘’≤≥≈→′″½ \u00A0\uFFFD";

    /// <summary>Weight 400.</summary>
    public static Typeface Regular => RegularFace.Value;

    /// <summary>Weight 600.</summary>
    public static Typeface SemiBold => SemiBoldFace.Value;

    /// <summary>The name of this weight, e.g. <c>EmberwrightSans-Regular</c>.</summary>
    public string Name { get; }

    /// <summary>Height of the tallest letter above the baseline, in em.</summary>
    public double Ascent => _metrics.Ascent;

    /// <summary>Depth of the lowest letter below the baseline, in em, positive.</summary>
    public double Descent => _metrics.Descent;

    internal byte[] File { get; }

    /// <summary>True when this weight draws the character.</summary>
    public bool Covers(Rune character) => _metrics.Covers(character);

    /// <summary>Width of a text on one line, in the unit of <paramref name="size"/>.</summary>
    /// <param name="text">The text; what the font lacks counts as its box.</param>
    /// <param name="size">Letter size (one em), any unit.</param>
    public double Width(string text, double size) => _metrics.Width(text) * size;
}
