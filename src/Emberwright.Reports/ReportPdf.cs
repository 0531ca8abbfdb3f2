using Emberwright.Reports.Pages;

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
    /// <returns>A PDF 1.4 file: a page for the customer, a stop-use notice where one stands, figures, the stove's section, photos.</returns>
    public static byte[] Render(ReportInput input, PageFormat format) => Lay(input, format).Pdf();

    /// <summary>Lays the report out, to be looked at or written.</summary>
    /// <param name="input">What to print.</param>
    /// <param name="format">Size of the paper.</param>
    public static Paper Lay(ReportInput input, PageFormat format)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(format);
        var pages = ReportPages.Lay(input, format);
        return new Paper(pages.Pages, pages.Bookmarks, new PdfWords(ReportPages.Title(input), input.Firm.Name, input.Appliance, input.EngineVersion, input.At, input.Language)
        {
            Seal = ReportPages.SealOf(input, format),
            Colour = input.Firm.Colour,
        });
    }
}
