using Emberwright.Cli.Json;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Visits;
using PdfSharp.Pdf.IO;

namespace Emberwright.Cli.Commands;

/// <summary>The customer's page and the figures, as PDF.</summary>
internal sealed class ReportCommand(Terminal terminal) : VisitCommand<ReportSettings>(terminal)
{
    protected override bool WriteText(Findings findings, ReportSettings settings)
    {
        var written = WritePdf(findings, settings);
        Terminal.Out.WriteLine($"{written.File}: {written.Pages} pages, {written.Bytes / 1024} kB");
        return false;
    }

    protected override bool WriteJson(Findings findings, ReportSettings settings)
    {
        Write(WritePdf(findings, settings));
        return false;
    }

    private static ReportDocument WritePdf(Findings findings, ReportSettings settings)
    {
        var pdf = ReportPdf.Render(VisitReport.Of(findings.Visit, findings.Beliefs, Engine.Version, settings.System, _ => []), settings.Format);
        var path = settings.Output ?? Path.ChangeExtension(settings.File == VisitSettings.StandardInput ? "report" : Path.GetFileName(settings.File), ".pdf");
        Terminal.Write(path, pdf, "-o");

        return new ReportDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            File = path,
            Pages = PageCount(pdf),
            Bytes = pdf.Length,
        };
    }

    private static int PageCount(byte[] pdf)
    {
        using var document = PdfReader.Open(new MemoryStream(pdf), PdfDocumentOpenMode.Import);
        return document.PageCount;
    }
}
