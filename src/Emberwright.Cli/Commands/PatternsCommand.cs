using System.ComponentModel;
using System.Text;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Cutaway;
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

        [CommandOption("--svg <FILE>")]
        [Description("Draw a section through the one pattern named, as SVG")]
        public string? Svg { get; init; }

        public override ValidationResult Validate() =>
            Svg is not null && Pattern is null ? ValidationResult.Error("--svg draws one pattern; name it, such as damper-insert.") : Units.ToLowerInvariant() is "us" or "si"
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
        if (settings.Svg is { } file && !Draw(patterns[0], file)) return ExitCodes.BadInput;
        if (settings.Json) terminal.Out.WriteLine(JsonSerializer.Serialize(PatternsDocument.Of(patterns, units), JsonOf.Options));
        else WriteText(patterns, units);
        return ExitCodes.Ok;
    }

    private bool Draw(Pattern pattern, string file)
    {
        try
        {
            Terminal.Write(file, Encoding.UTF8.GetBytes(SvgWriter.Alone(CutawayPicture.Draw(pattern))), "--svg");
            return true;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return false;
        }
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
