using PdfSharp.Fonts;

namespace Emberwright.Reports.Fonts;

/// <summary>
/// Gives the PDF library our two weights and nothing else. A family it does not have is named at once,
/// instead of a bare null reference later.
/// </summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>Puts the resolver in place, once; both weights are read and checked here.</summary>
    public static void Install()
    {
        _ = Typeface.Regular;
        _ = Typeface.SemiBold;
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is EmbeddedFonts) return;
            GlobalFontSettings.FontResolver = new EmbeddedFonts();
        }
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic)
    {
        if (familyName != Typeface.Family)
            throw new InvalidOperationException($"The font family '{familyName}' is not embedded; only '{Typeface.Family}' is. Use it, or embed the other one.");
        return new FontResolverInfo(bold ? Typeface.SemiBold.Name : Typeface.Regular.Name);
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) =>
        faceName == Typeface.SemiBold.Name ? Typeface.SemiBold.File
        : faceName == Typeface.Regular.Name ? Typeface.Regular.File
        : throw new InvalidOperationException($"The font '{faceName}' is not embedded; '{Typeface.Regular.Name}' and '{Typeface.SemiBold.Name}' are.");
}
