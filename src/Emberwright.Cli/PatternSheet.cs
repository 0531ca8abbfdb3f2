using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;
using Spectre.Console;

namespace Emberwright.Cli;

/// <summary>One pattern on the terminal: what it reads when healthy, what opens, where ash hides, what seals, how to find the rest.</summary>
internal sealed class PatternSheet(IAnsiConsole console, UnitSystem units)
{
    public void Write(Pattern pattern)
    {
        Ratings(pattern);
        var built = pattern.Anatomy;
        Rows("Access panels", ["id", "panel", "where", "fasteners", "serves"],
            built.Panels.Select(p => new[] { p.Id, $"{p.Name}; opens to {p.OpensTo}", After(p), p.FastenersText, string.Join(", ", p.Serves.Select(Area)) }));
        Rows("Where ash hides", ["id", "place", "area", "how it is reached", "through"],
            built.AshTraps.Select(t => new[] { t.Id, t.IsHidden ? $"{t.Name} (hidden): {t.Where}" : $"{t.Name}: {t.Where}", Area(t.Area), t.Reach, string.Join(", ", t.Through) }));
        Rows("Gaskets", ["id", "where", "what", "side", "replace when"],
            built.Gaskets.Select(g => new[] { g.Id, g.Where, $"{g.Material} {g.Size}".TrimEnd(), AnatomyWords.Sides.Of(g.Side), g.ReplaceWhen }));
        Rows("Switches and sensors", ["id", "what", "where", "senses"],
            built.Sensors.Select(s => new[] { s.Component, s.Name, s.Where, s.Senses.Replace('-', ' ') }));
        Rows("How to find what is not known", ["card member", "what", "look", "measure", "until then"],
            built.HowToFind.Select(d => new[] { d.Member, d.What, d.Look, d.Measure, d.UntilThen }));
        Rows("Typical ratings", ["part", "name", "power", "resistance, cold", "running"],
            TypicalParts.Of(pattern).Select(p => new[]
            {
                p.Rating.Component, p.Name, p.Rating.PowerW is { } w ? $"{w:0} W" : "", p.Rating.ResistanceOhm is { } r ? $"{r:0.#} Ω" : "",
                p.Rating.CurrentA is { } a ? $"{a:0.##} A" : "",
            }));
        console.MarkupLine("[bold]Cautions[/]");
        foreach (var caution in built.Panels.SelectMany(p => p.Cautions).Distinct())
        {
            console.WriteLine("  " + caution);
        }

        console.WriteLine();
        console.WriteLine("All of it is typical, from memory; the appliance's manual and what you see take precedence.");
    }

    private void Ratings(Pattern pattern) => Rows("What a healthy one reads", ["where", "quantity", "condition", "range", "origin"],
        pattern.Ratings.Select(r =>
        {
            var shown = new Shown(r.Observable.Measure, units);
            return new[]
            {
                r.Observable.Place, MeasureUnits.Name(r.Observable.Measure), ConditionText.Format(r.Observable.Condition),
                $"{shown.NumberText(r.Low)} … {shown.Text(r.High)}", r.Origin.Source,
            };
        }));

    private static string After(AccessPanel panel) => panel.After.Count == 0 ? panel.Where : $"{panel.Where} (after {string.Join(", ", panel.After)})";

    private static string Area(Stove.Area area) => Visits.Journal.EnumWords.Of(area).Replace('-', ' ');

    private void Rows(string title, string[] columns, IEnumerable<string[]> rows)
    {
        console.MarkupLineInterpolated($"[bold]{title}[/]");
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns([.. columns.Select(c => new TableColumn(c))]);
        foreach (var row in rows)
        {
            table.AddRow([.. row.Select(Markup.Escape)]);
        }

        console.Write(table);
    }
}
