using System.Collections.Immutable;
using Emberwright.Reports.Fonts;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Emberwright.Reports;

/// <summary>What a printed document says of itself.</summary>
/// <param name="Title">Its title, shown in the window's bar.</param>
/// <param name="Author">Whose it is.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="EngineVersion">Version of the engine.</param>
/// <param name="At">The only clock it knows: the visit's.</param>
/// <param name="Language">Language of its text, BCP 47.</param>
internal sealed record PdfWords(string Title, string Author, string Subject, string EngineVersion, DateTimeOffset At, string Language = "en")
{
    /// <summary>The seal's hash and the form it was printed in; null for a document without a seal.</summary>
    public PrintedSeal? Seal { get; init; }

    /// <summary>The firm's colour, 0xRRGGBB; null takes ink.</summary>
    public int? Colour { get; init; }
}

/// <summary>
/// Writes laid-out pages as a PDF file: fonts embedded and subset, outline, metadata, no clock and no chance of its own.
/// </summary>
internal static class PdfFile
{
    public static byte[] Write(ImmutableArray<Scene> pages, ImmutableArray<Bookmark> bookmarks, PdfWords words)
    {
        EmbeddedFonts.Install();
        using var document = new PdfDocument();
        var info = document.Info;
        info.Title = Printable.Text(words.Title);
        info.Author = Printable.Text(words.Author);
        info.Subject = Printable.Text(words.Subject);
        info.Creator = $"Emberwright {words.EngineVersion}";
        info.CreationDate = words.At.UtcDateTime;
        info.ModificationDate = words.At.UtcDateTime;
        words.Seal?.Write(info);
        document.Language = words.Language;
        document.ViewerPreferences.DisplayDocTitle = true;
        if (bookmarks.Length > 1) document.PageMode = PdfPageMode.UseOutlines;
        var made = new List<PdfPage>();
        foreach (var scene in pages)
        {
            var page = document.AddPage();
            page.Width = XUnitPt.FromPoint(scene.View.Width);
            page.Height = XUnitPt.FromPoint(scene.View.Height);
            made.Add(page);
            using var graphics = XGraphics.FromPdfPage(page);
            PdfWriter.Draw(graphics, scene, 0, 0, 1, words.Colour);
        }

        foreach (var mark in bookmarks) document.Outlines.Add(Printable.Text(mark.Title), made[mark.Page], true);
        using var file = new MemoryStream();
        document.Save(file);
        return SameBytes.Of(file.ToArray());
    }
}
