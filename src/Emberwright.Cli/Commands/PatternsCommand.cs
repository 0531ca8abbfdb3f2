using System.ComponentModel;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>The families of construction the tool knows; one by name: its ranges, panels, ash traps, gaskets, sensors, and how to find the rest.</summary>
internal sealed class PatternsCommand(Terminal terminal) : Command<PatternsCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[PATTERN]")]
        [Description("Id, name or other word for one pattern; all when left out")]
        public string? Pattern { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }

        [CommandOption("--units <SYSTEM>")]
        [Description("us (inWC, degF) or si (Pa, degC)")]
        [DefaultValue("si")]
        public string Units { get; init; } = "si";

        public override ValidationResult Validate() =>
            Units.ToLowerInvariant() is "us" or "si"
                ? ValidationResult.Success()
                : ValidationResult.Error($"--units is '{Units}'; it takes us (inWC, degF) or si (Pa, degC).");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var patterns = PatternLibrary.All;
        if (settings.Pattern is { } words)
        {
            if (PatternLibrary.Find(words) is not { } one)
            {
                terminal.Error.WriteLine($"PATTERN: no pattern goes by '{words}'. Take one of {string.Join(", ", patterns.Select(p => p.Id))}.");
                return ExitCodes.BadInput;
            }

            patterns = [one];
        }

        var units = settings.Units.Equals("us", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Us : UnitSystem.Si;
        if (settings.Json) terminal.Out.WriteLine(JsonSerializer.Serialize(PatternsDocument.Of(patterns, units), JsonOf.Options));
        else WriteText(patterns, units);
        return ExitCodes.Ok;
    }

    private void WriteText(IReadOnlyList<Pattern> patterns, UnitSystem units)
    {
        foreach (var pattern in patterns)
        {
            terminal.Console.MarkupLineInterpolated($"[bold]{pattern.Id}[/]  {pattern.Name}");
            terminal.Console.WriteLine($"  ports: {string.Join(", ", pattern.Ports.Select(p => p.Id))}; sensing hose at {pattern.SensePort}; {pattern.SupplyV:0} V");
        }

        if (patterns is [var one])
        {
            new PatternSheet(terminal.Console, units).Write(one);
        }
    }
}
