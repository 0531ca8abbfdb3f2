using System.ComponentModel;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>What can be wrong, how often, and what cures it.</summary>
internal sealed class FaultsCommand(Terminal terminal) : Command<FaultsCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandOption("--pattern <ID>")]
        [Description("Only those that occur on this pattern")]
        public string? Pattern { get; init; }

        [CommandOption("--area <AREA>")]
        [Description("Only those of this area, e.g. vent, interlocks")]
        public string? Area { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }

        public override ValidationResult Validate()
        {
            if (Pattern is not null && !PatternIds.All.Contains(Pattern))
                return ValidationResult.Error($"--pattern is '{Pattern}'; it takes one of {string.Join(", ", PatternIds.All)}.");
            return Area is not null && EnumWords.Find<Area>(Area) is null
                ? ValidationResult.Error($"--area is '{Area}'; it takes one of {EnumWords.All<Area>()}.")
                : ValidationResult.Success();
        }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var area = EnumWords.Find<Area>(settings.Area);
        var faults = (settings.Pattern is { } pattern ? FaultList.On(pattern) : FaultList.All).Where(f => area is null || f.Area == area).ToList();
        if (settings.Json) WriteJson(faults, settings.Pattern);
        else WriteText(faults);
        return ExitCodes.Ok;
    }

    private void WriteText(List<Fault> faults)
    {
        foreach (var group in faults.GroupBy(f => f.Area).OrderBy(g => g.Key))
        {
            terminal.Console.MarkupLineInterpolated($"[bold]{EnumWords.Of(group.Key).Replace('-', ' ')}[/]");
            var table = new Table { Border = TableBorder.Simple };
            table.AddColumns(new TableColumn("id"), new TableColumn("fault"), new TableColumn("% of calls").RightAligned(), new TableColumn("remedy"), new TableColumn("min").RightAligned(), new TableColumn("part").RightAligned());
            foreach (var f in group)
                table.AddRow(f.Id, Markup.Escape(f.Name), $"{f.BaseRatePercent:0.##}", Markup.Escape(f.Remedy.Words), $"{f.Remedy.Minutes:0}", $"{f.Remedy.PartCost:0}");
            terminal.Console.Write(table);
        }

        terminal.Console.WriteLine($"{faults.Count} faults.");
    }

    private void WriteJson(List<Fault> faults, string? pattern)
    {
        BurnOdds? Odds(Fault f) => pattern is null ? null : BurnOddsTable.Of(pattern, f.Id);
        terminal.Out.WriteLine(JsonSerializer.Serialize(new
        {
            faults = faults.Select(f => new
            {
                f.Id,
                f.Name,
                area = EnumWords.Of(f.Area),
                f.BaseRatePercent,
                f.Origin,
                patterns = f.Patterns.Count > 0 ? f.Patterns : PatternIds.All,
                changes = f.Shifts.Select(s => new { parameter = EnumWords.Of(s.Parameter), s.Mean, s.Sd }),
                circuit = f.Circuit.Select(c => new { c.Component, state = EnumWords.Of(c.State), c.Factor }),
                starts = Odds(f)?.Frequency.OrderBy(o => o.Key).ToDictionary(o => EnumWords.Of(o.Key), o => o.Value),
                alarms = Odds(f)?.Alarms.OrderBy(a => a.Key, StringComparer.Ordinal).ToDictionary(a => a.Key, a => a.Value),
                signs = f.Symptoms.Select(s => new { s.Sign, s.Outcome, s.Probability }),
                remedy = new { kind = EnumWords.Of(f.Remedy.Kind), f.Remedy.Words, f.Remedy.Minutes, f.Remedy.PartCost, f.Remedy.Cautions },
                f.SafetyStop,
            }),
        }, JsonOf.Options));
    }
}
