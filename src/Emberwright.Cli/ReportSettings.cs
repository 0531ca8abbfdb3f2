using System.ComponentModel;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What the report command takes beside the visit.</summary>
internal sealed class ReportSettings : VisitSettings
{
    [CommandOption("-o|--output <PDF>")]
    [Description("Where the PDF is written; the visit's file name with .pdf unless given")]
    public string? Output { get; init; }

    [CommandOption("--page <SIZE>")]
    [Description("letter or a4; letter with us units and a4 with si unless given")]
    public string? Page { get; init; }

    public PageFormat Format => (Page?.ToLowerInvariant() ?? (System == UnitSystem.Us ? "letter" : "a4")) == "letter" ? PageFormat.Letter : PageFormat.A4;

    public override ValidationResult Validate() => Page?.ToLowerInvariant() is null or "letter" or "a4"
        ? base.Validate()
        : ValidationResult.Error($"--page is '{Page}'; it takes letter or a4.");
}
