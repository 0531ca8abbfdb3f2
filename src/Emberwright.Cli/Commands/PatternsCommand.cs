using System.ComponentModel;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>The families of construction the tool knows, with the ranges a healthy stove of each reads.</summary>
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

        if (settings.Json) WriteJson(patterns);
        else WriteText(patterns);
        return ExitCodes.Ok;
    }

    private void WriteText(IReadOnlyList<Pattern> patterns)
    {
        foreach (var pattern in patterns)
        {
            terminal.Console.MarkupLineInterpolated($"[bold]{pattern.Id}[/]  {pattern.Name}");
            terminal.Console.WriteLine($"  ports: {string.Join(", ", pattern.Ports.Select(p => p.Id))}; sensing hose at {pattern.Switch.SensePort}; {pattern.SupplyV:0} V");
            if (patterns.Count > 1) continue;
            var table = new Table { Border = TableBorder.Simple };
            table.AddColumns(new TableColumn("where"), new TableColumn("quantity"), new TableColumn("condition"), new TableColumn("range").RightAligned(), new TableColumn("origin"));
            foreach (var r in pattern.Ratings)
            {
                var shown = new Shown(r.Observable.Measure, UnitSystem.Si);
                table.AddRow(r.Observable.Place, MeasureUnits.Name(r.Observable.Measure), Markup.Escape(ConditionText.Format(r.Observable.Condition)),
                    Markup.Escape($"{shown.NumberText(r.Low)} … {shown.Text(r.High)}"), Markup.Escape(r.Origin.ToString() ?? ""));
            }

            terminal.Console.Write(table);
        }
    }

    private void WriteJson(IReadOnlyList<Pattern> patterns) => terminal.Out.WriteLine(JsonSerializer.Serialize(new
    {
        patterns = patterns.Select(p => new
        {
            p.Id,
            p.Name,
            p.Synonyms,
            ports = p.Ports.Select(x => new { x.Id, x.Name }),
            sensePort = p.Switch.SensePort,
            supplyV = p.SupplyV,
            parameters = p.Parameters.Select(b => EnumWords.Of(b.Parameter)),
        }),
    }, JsonOf.Options));
}
