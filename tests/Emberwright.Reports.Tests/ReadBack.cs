using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Emberwright.Reports.Tests;

/// <summary>Reads a PDF file back with another library.</summary>
internal static class ReadBack
{
    /// <summary>The words of each page, lines joined by blanks, no-break blanks as blanks.</summary>
    public static IReadOnlyList<string> Pages(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(Text)];
    }

    /// <summary>All pages' words.</summary>
    public static string All(byte[] pdf) => string.Join(' ', Pages(pdf));

    /// <summary>The language the file says its text is in.</summary>
    public static string Language(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return document.Structure.Catalog.CatalogDictionary.Data["Lang"].ToString()!.Trim('(', ')');
    }

    // Letters in the order they were drawn; each DrawString starts a new word.
    private static string Text(Page page)
    {
        var made = new System.Text.StringBuilder();
        Letter? last = null;
        foreach (var letter in page.Letters)
        {
            if (last is not null && (Math.Abs(letter.StartBaseLine.Y - last.EndBaseLine.Y) > 0.1 || Math.Abs(letter.StartBaseLine.X - last.EndBaseLine.X) > 0.6))
                made.Append(' ');
            made.Append(letter.Value);
            last = letter;
        }

        return made.ToString().Replace('\u00A0', ' ').Replace("  ", " ");
    }
}
