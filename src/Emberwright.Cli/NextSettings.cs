using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What the next command takes beside the visit.</summary>
internal sealed class NextSettings : VisitSettings
{
    [CommandOption("--depth <STEPS>")]
    [Description("How many checks ahead are weighed: 1, or 2 for a better answer that takes longer")]
    [DefaultValue(1)]
    public int Depth { get; init; } = 1;

    public override ValidationResult Validate() => Depth is 1 or 2
        ? base.Validate()
        : ValidationResult.Error($"--depth is '{Depth}'; it takes 1 or 2.");
}
