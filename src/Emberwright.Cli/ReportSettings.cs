using System.ComponentModel;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What the report command takes beside the visit.</summary>
internal sealed class ReportSettings : VisitSettings
{
    [CommandOption("-o|--output <FILE>")]
    [Description("Where the PDF is written; the visit's file name with .pdf unless given")]
    public string? Output { get; init; }
}
