using System.ComponentModel;
using Emberwright.Cli.Attending;
using Emberwright.Diagnosis.Practice;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Hides something in a virtual stove and lets the user find and mend it.</summary>
internal sealed class PractiseCommand(Terminal terminal) : Command<PractiseCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandOption("--pattern <PATTERN>")]
        [Description("Pattern of the stove")]
        [DefaultValue("damper-insert")]
        public string Pattern { get; init; } = "damper-insert";

        [CommandOption("--seed <N>")]
        [Description("The same number hides the same stove; another one each time when left out")]
        public int? Seed { get; init; }

        [CommandOption("--difficulty <WORD>")]
        [Description("easy: one frequent fault on a clean stove; medium: one of any kind beside the usual dirt; hard: two, and a vague customer")]
        [DefaultValue("medium")]
        public string Difficulty { get; init; } = "medium";

        [CommandOption("--watch")]
        [Description("Only show the way the planner takes")]
        public bool Watch { get; init; }

        [CommandOption("--units <SYSTEM>")]
        [Description("us (inWC, degF) or si (Pa, degC)")]
        [DefaultValue("si")]
        public string Units { get; init; } = "si";

        public UnitSystem System => Units.Equals("us", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Us : UnitSystem.Si;

        public PracticeLevel? Level => Difficulty.ToLowerInvariant() switch
        {
            "easy" => PracticeLevel.Plain,
            "medium" => PracticeLevel.Ordinary,
            "hard" => PracticeLevel.Tangled,
            _ => null,
        };

        public override ValidationResult Validate() =>
            Level is null ? ValidationResult.Error($"--difficulty is '{Difficulty}'; it takes easy, medium or hard.")
            : PatternLibrary.Find(Pattern) is null ? ValidationResult.Error($"--pattern: no pattern goes by '{Pattern}'. Take one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}.")
            : Units.ToLowerInvariant() is "us" or "si" ? ValidationResult.Success()
            : ValidationResult.Error($"--units is '{Units}'; it takes us (inWC, degF) or si (Pa, degC).");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        // A number short enough to be written down and given to somebody else.
        var seed = settings.Seed ?? (int)(TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds() % 100_000);
        var session = new PracticeSession(terminal, settings.System, PracticeVisit.Begin(PatternLibrary.Find(settings.Pattern)!, seed, settings.Level!.Value), seed);
        if (settings.Watch) session.Watch();
        else session.Run();
        return ExitCodes.Ok;
    }
}
