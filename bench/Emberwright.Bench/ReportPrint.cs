using System.Diagnostics;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Bench;

/// <summary>How long a report takes to lay out and write: a visit file and photos in, median of several runs out.</summary>
internal static class ReportPrint
{
    private const int Runs = 15;

    public static void Run(string visitFile, string[] photos)
    {
        var findings = Findings.Of(VisitFile.Read(File.ReadAllText(visitFile))) ?? throw new InvalidOperationException($"{visitFile} does not say which stove it is.");
        var input = VisitReport.Of(findings.Visit, findings.Beliefs, Engine.Version, UnitSystem.Si, _ => []);
        input = input with { Photos = [.. photos.Select((p, i) => new ReportPhoto($"Photo {i + 1}", [.. File.ReadAllBytes(p)]))] };
        List<double> took = [];
        var pdf = ReportPdf.Render(input, PageFormat.A4);
        for (var i = 0; i < Runs; i++)
        {
            var watch = Stopwatch.StartNew();
            pdf = ReportPdf.Render(input, PageFormat.A4);
            took.Add(watch.Elapsed.TotalMilliseconds);
        }

        took.Sort();
        Console.WriteLine($"{ReportPdf.Lay(input, PageFormat.A4).Sheets.Length} pages, {photos.Length} photos, {pdf.Length / 1e6:F2} MB: best {took[0]:F0} ms, median {took[Runs / 2]:F0} ms, worst {took[^1]:F0} ms of {Runs}");
    }
}
