using System.Text;
using Emberwright.Cli.Json;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Papers;
using Emberwright.Visits;
using PdfSharp.Pdf.IO;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>The report and the papers beside it, of one visit or of a folder of them.</summary>
internal sealed class ReportCommand(Terminal terminal) : VisitCommand<ReportSettings>(terminal)
{
    public override int Execute(CommandContext context, ReportSettings settings, CancellationToken cancellationToken)
    {
        try
        {
            using var spoken = Letterhead.Language(settings.Language);
            return settings.Batch is { } folder ? WriteAll(folder, settings, cancellationToken) : base.Execute(context, settings, cancellationToken);
        }
        catch (InputFileException e)
        {
            Terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    protected override bool WriteText(Findings findings, ReportSettings settings)
    {
        var (path, bytes) = Write(findings, settings, PathOf(settings));
        Terminal.Out.WriteLine(settings.Paper == "csv" ? $"{path}: {bytes.Length} bytes" : $"{path}: {PageCount(bytes)} pages, {bytes.Length / 1024} kB");
        return false;
    }

    protected override bool WriteJson(Findings findings, ReportSettings settings)
    {
        var (path, bytes) = Write(findings, settings, PathOf(settings));
        Write(new ReportDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            File = path,
            Pages = settings.Paper == "csv" ? 0 : PageCount(bytes),
            Bytes = bytes.Length,
        });
        return false;
    }

    private int WriteAll(string folder, ReportSettings settings, CancellationToken stop)
    {
        if (!Directory.Exists(folder)) throw new InputFileException($"{folder}: no such folder. Name the one that holds the visit files with --batch.", null);
        string[] files = [.. Directory.GetFiles(folder, "*.jsonl").Order(StringComparer.Ordinal)];
        Directory.CreateDirectory(settings.Output!);
        var failed = 0;
        for (var i = 0; i < files.Length && !stop.IsCancellationRequested; i++)
        {
            Progress(i, files.Length, Path.GetFileName(files[i]));
            try
            {
                if (Read(files[i], settings.Priors) is { } findings) Write(findings, settings, Path.Combine(settings.Output!, Path.ChangeExtension(Path.GetFileName(files[i]), Ending(settings))));
                else failed++;
            }
            catch (Exception e) when (e is OutputException or InputFileException)
            {
                if (Terminal.Live) Terminal.Error.WriteLine();
                Terminal.Error.WriteLine($"{files[i]}: {e.Message}");
                failed++;
            }
        }

        Progress(files.Length, files.Length, "");
        Terminal.Out.WriteLine($"{settings.Output}: {files.Length - failed} of {files.Length} written{(failed > 0 ? $", {failed} not" : "")}");
        return failed > 0 ? ExitCodes.BadInput : ExitCodes.Ok;
    }

    // One line that is written over, on a terminal; nothing where the output is kept.
    private void Progress(int done, int all, string name)
    {
        if (!Terminal.Live) return;
        const int width = 24;
        var filled = all == 0 ? width : done * width / all;
        Terminal.Error.Write($"\r[{new string('█', filled)}{new string('·', width - filled)}] {done} of {all} {name}\u001b[K{(done == all ? "\n" : "")}");
    }

    private static (string Path, byte[] Bytes) Write(Findings findings, ReportSettings settings, string path)
    {
        var bytes = Bytes(findings, settings);
        Terminal.Write(path, bytes, "-o");
        return (path, bytes);
    }

    private static byte[] Bytes(Findings findings, ReportSettings settings)
    {
        var visit = findings.Visit;
        var firm = Letterhead.Read(settings.Firm) ?? new Firm(visit.Call?.Firm ?? "", "");
        if (settings.Paper == "csv") return Encoding.UTF8.GetBytes(LabourAndParts.Csv(visit));
        if (settings.Paper == "quote") return Papers.Quote(VisitPapers.Quote(visit, findings.Beliefs, firm, Engine.Version), settings.Format).Pdf();
        if (settings.Paper == "form") return Papers.BlankForm(VisitPapers.Form(visit.Call?.VisitKind ?? Visits.Journal.VisitKind.Service, findings.Case.Pattern, firm, Engine.Version), settings.Format).Pdf();
        var input = VisitReport.Of(visit, findings.Beliefs, Engine.Version, settings.System, Letterhead.Photos(settings.Photos), letterhead: firm);
        return settings.Paper switch
        {
            "notice" => input.Notice is null ? throw new InputFileException("No stop-use notice stands in this visit, so none is printed.", null) : Papers.StopUseNotice(input, settings.Format).Pdf(),
            "tag" => Papers.DoorTag(input).Pdf(),
            "card" => Papers.HandoverCard(input, settings.Format).Pdf(),
            _ => ReportPdf.Render(input, settings.Format),
        };
    }

    private static string PathOf(ReportSettings settings) =>
        settings.Output ?? Path.ChangeExtension(settings.File == VisitSettings.StandardInput ? settings.Paper : Path.GetFileName(settings.File), Ending(settings));

    private static string Ending(ReportSettings settings) => settings.Paper == "csv" ? ".csv" : ".pdf";

    private static int PageCount(byte[] pdf)
    {
        using var document = PdfReader.Open(new MemoryStream(pdf), PdfDocumentOpenMode.Import);
        return document.PageCount;
    }

}
