using Emberwright.Cli.Json;
using Emberwright.Diagnosis;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>What a healthy stove of this kind should read here, today.</summary>
internal sealed class ExpectCommand(Terminal terminal) : VisitCommand<VisitSettings>(terminal)
{
    protected override bool WriteText(Findings findings, VisitSettings settings)
    {
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        foreach (var condition in findings.Beliefs.Bands.GroupBy(b => b.Observable.Condition))
        {
            Terminal.Console.WriteLine();
            Terminal.Console.WriteLine(ConditionText.Format(condition.Key));
            var table = NewTable(("where", false), ("quantity", false), ("healthy", true), ("most likely", true), ("unit", false), ("rests on", false));
            foreach (var band in condition) table.AddRow([.. Row(band, settings.System).Select(Markup.Escape)]);
            Terminal.Console.Write(table);
        }

        var confidence = findings.Beliefs.Bands.Select(b => b.Confidence).DefaultIfEmpty(0.9).First();
        Terminal.Console.WriteLine($"Of healthy stoves of this kind, here, today, {confidence:P0} read inside.");
        return false;
    }

    protected override bool WriteJson(Findings findings, VisitSettings settings)
    {
        Write(new ExpectDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            Bands = JsonOf.Bands(findings, settings.System),
        });
        return false;
    }

    private static string[] Row(Band band, UnitSystem units)
    {
        var shown = new Shown(band.Observable.Measure, units);
        return
        [
            band.Observable.Place, MeasureUnits.Name(band.Observable.Measure),
            $"{shown.NumberText(band.Low)} … {shown.NumberText(band.High)}", shown.NumberText(band.Expected), shown.Symbol, band.Origin,
        ];
    }
}
