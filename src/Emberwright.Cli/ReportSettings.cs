using System.ComponentModel;
using Emberwright.Reports.Pages;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What the report command takes beside the visit.</summary>
internal sealed class ReportSettings : VisitOptions
{
    [CommandArgument(0, "[FILE]")]
    [Description("The visit file (JSON Lines); - reads standard input")]
    public string File { get; init; } = "";

    public override string Visit => File;

    [CommandOption("-o|--output <PATH>")]
    [Description("Where it is written; the visit's file name with .pdf unless given, a folder with --batch")]
    public string? Output { get; init; }

    [CommandOption("--paper <PAPER>")]
    [Description("report, notice, tag, card, quote, form or csv")]
    [DefaultValue("report")]
    public string Paper { get; init; } = "report";

    [CommandOption("--batch <DIR>")]
    [Description("Every visit file of a folder, each into the folder of -o")]
    public string? Batch { get; init; }

    [CommandOption("--photos <DIR>")]
    [Description("Folder with the photos and signatures the visit names, each file called by its SHA-256")]
    public string? Photos { get; init; }

    [CommandOption("--firm <FILE>")]
    [Description("The letterhead: JSON with name, contact, colour (#RRGGBB) and logo (a PNG or JPEG beside it)")]
    public string? Firm { get; init; }

    [CommandOption("--page <SIZE>")]
    [Description("letter or a4; letter with us units and a4 with si unless given")]
    public string? Page { get; init; }

    [CommandOption("--language <FILE>")]
    [Description("A translation of the papers, as docs/translations.md describes; English unless given")]
    public string? Language { get; init; }

    public PageFormat Format => (Page?.ToLowerInvariant() ?? (System == UnitSystem.Us ? "letter" : "a4")) == "letter" ? PageFormat.Letter : PageFormat.A4;

    /// <summary>The papers, as --paper names them.</summary>
    public static IReadOnlyList<string> Papers { get; } = ["report", "notice", "tag", "card", "quote", "form", "csv"];

    public override ValidationResult Validate() =>
        Page?.ToLowerInvariant() is not (null or "letter" or "a4") ? ValidationResult.Error($"--page is '{Page}'; it takes letter or a4.")
        : !Papers.Contains(Paper) ? ValidationResult.Error($"--paper is '{Paper}'; it takes {string.Join(", ", Papers)}.")
        : File.Length == 0 == (Batch is null) ? ValidationResult.Error("Name one visit file, or a folder with --batch.")
        : Batch is not null && Output is null ? ValidationResult.Error("--batch writes into a folder; name it with -o.")
        : base.Validate();
}
