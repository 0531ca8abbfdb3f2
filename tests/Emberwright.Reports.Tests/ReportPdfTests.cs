using Emberwright.Reports.Pages;
using Xunit;

namespace Emberwright.Reports.Tests;

public class ReportPdfTests
{
    [Fact]
    public void Look()
    {
        if (Environment.GetEnvironmentVariable("LOOK") is not { } folder) return;
        File.WriteAllBytes(Path.Combine(folder, "cleaned-letter.pdf"), ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter));
        File.WriteAllBytes(Path.Combine(folder, "limited-a4.pdf"), ReportPdf.Render(SampleReport.Limited, PageFormat.A4));
        File.WriteAllBytes(Path.Combine(folder, "refused-letter.pdf"), ReportPdf.Render(SampleReport.Refused, PageFormat.Letter));
    }
}
