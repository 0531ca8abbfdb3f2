using System.ComponentModel;
using System.Text;
using Emberwright.Cli.Json;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Whether a printed report and a visit file belong together and are unchanged since they were signed.</summary>
internal sealed class VerifyCommand(Terminal terminal) : Command<VerifyCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<PDF>")]
        [Description("The report")]
        public required string Pdf { get; init; }

        [CommandArgument(1, "<FILE>")]
        [Description("The visit file it was printed from")]
        public required string File { get; init; }

        [CommandOption("--photos <DIR>")]
        [Description("Folder with the photos, to compare the pages too")]
        public string? Photos { get; init; }

        [CommandOption("--firm <FILE>")]
        [Description("The letterhead, to compare the first page too")]
        public string? Firm { get; init; }

        [CommandOption("--language <FILE>")]
        [Description("The translation it was printed in, to compare the pages")]
        public string? Language { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var pdf = File.ReadAllBytes(settings.Pdf);
            var visit = Visit.Fold(VisitFile.Read(File.ReadAllText(settings.File, Encoding.UTF8)).Journal);
            using var spoken = Letterhead.Language(settings.Language);
            var verdict = SealVerdict.Of(pdf, visit, form => Again(visit, form, settings));
            if (settings.Json)
            {
                terminal.Out.WriteLine(System.Text.Json.JsonSerializer.Serialize(new { holds = verdict.Holds, verdict = verdict.Words, reasons = verdict.Reasons }, JsonOf.Options));
            }
            else
            {
                terminal.Out.WriteLine(verdict.Words);
                foreach (var reason in verdict.Reasons) terminal.Out.WriteLine($"  {reason}");
            }

            return verdict.Holds ? ExitCodes.Ok : ExitCodes.Findings;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InputFileException or InvalidDataException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    // The report printed again from the file, in the units and on the paper of the one at hand.
    private static byte[] Again(Visit visit, string form, Settings settings)
    {
        var system = form.StartsWith("us", StringComparison.Ordinal) ? UnitSystem.Us : UnitSystem.Si;
        var format = form.EndsWith("a4", StringComparison.Ordinal) ? PageFormat.A4 : PageFormat.Letter;
        return ReportPdf.Render(VisitReport.Of(visit, null, Engine.Version, system, Letterhead.Photos(settings.Photos), letterhead: Letterhead.Read(settings.Firm)), format);
    }
}
