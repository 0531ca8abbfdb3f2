using Emberwright.Reports.Fonts;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Emberwright.Reports;

/// <summary>
/// The report as a PDF file, the same from browser, terminal and server. The same input gives the same bytes:
/// its only clock is the visit's, and the library's random marks are overwritten from the content.
/// </summary>
public static class ReportPdf
{
    /// <summary>Renders the report.</summary>
    /// <param name="input">What to print.</param>
    /// <param name="format">Size of the paper.</param>
    /// <returns>A PDF 1.4 file: a page for the customer, a page of figures, then photos.</returns>
    public static byte[] Render(ReportInput input, PageFormat format)
    {
        EmbeddedFonts.Install();
        var pages = ReportPages.Lay(input, format);
        using var document = new PdfDocument();
        Describe(document, input);
        var made = new List<PdfPage>();
        foreach (var scene in pages.Pages)
        {
            var page = document.AddPage();
            page.Width = XUnitPt.FromPoint(format.Width);
            page.Height = XUnitPt.FromPoint(format.Height);
            made.Add(page);
            using var graphics = XGraphics.FromPdfPage(page);
            PdfWriter.Draw(graphics, scene, 0, 0, 1);
        }

        foreach (var mark in pages.Bookmarks) document.Outlines.Add(mark.Title, made[mark.Page], true);
        using var file = new MemoryStream();
        document.Save(file);
        return SameBytes.Of(file.ToArray());
    }

    private static void Describe(PdfDocument document, ReportInput input)
    {
        var info = document.Info;
        info.Title = Printable.Text(ReportPages.Title(input));
        info.Author = Printable.Text(input.Firm.Name);
        info.Subject = Printable.Text(input.Appliance);
        info.Creator = $"Emberwright {input.EngineVersion}";
        info.CreationDate = input.At.UtcDateTime;
        info.ModificationDate = input.At.UtcDateTime;
        document.Language = input.Language;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.PageMode = PdfPageMode.UseOutlines;
    }
}
