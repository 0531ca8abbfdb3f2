using System.ComponentModel;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>What every command about one visit takes.</summary>
internal class VisitSettings : VisitOptions
{
    [CommandArgument(0, "<FILE>")]
    [Description("The visit file (JSON Lines); - reads standard input")]
    public required string File { get; init; }

    public override string Visit => File;
}

/// <summary>What commands about a visit take, wherever its file is named.</summary>
internal abstract class VisitOptions : CommandSettings
{
    /// <summary>Stands for standard input, which is written "-".</summary>
    public const string StandardInput = ":stdin";

    /// <summary>The visit file.</summary>
    public abstract string Visit { get; }

    [CommandOption("--json")]
    [Description("Write JSON, as docs/json.md describes")]
    public bool Json { get; init; }

    [CommandOption("--units <SYSTEM>")]
    [Description("us (inWC, degF) or si (Pa, degC)")]
    [DefaultValue("si")]
    public string Units { get; init; } = "si";

    [CommandOption("--priors <FILE>")]
    [Description("The firm's own rates of faults and fouling (JSON, docs/schema/priors.schema.json)")]
    public string? Priors { get; init; }

    public UnitSystem System => Units.Equals("us", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Us : UnitSystem.Si;

    public override ValidationResult Validate() =>
        Units.ToLowerInvariant() is "us" or "si"
            ? ValidationResult.Success()
            : ValidationResult.Error($"--units is '{Units}'; it takes us (inWC, degF) or si (Pa, degC).");
}
