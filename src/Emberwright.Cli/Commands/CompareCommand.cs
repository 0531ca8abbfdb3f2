using Emberwright.Cli.Json;
using Emberwright.Diagnosis;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>Each reading beside its healthy band.</summary>
internal sealed class CompareCommand(Terminal terminal) : VisitCommand<VisitSettings>(terminal)
{
    protected override bool WriteText(Findings findings, VisitSettings settings)
    {
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        if (findings.Beliefs.Comparisons.Count == 0)
        {
            Terminal.Console.WriteLine("No reading yet that has a healthy band. emberwright expect shows what to measure.");
            return false;
        }

        var table = NewTable(("when", false), ("where", false), ("condition", false), ("read", true), ("healthy", true), ("", false));
        foreach (var c in findings.Beliefs.Comparisons)
        {
            var shown = new Shown(c.Band.Observable.Measure, settings.System);
            var verdict = Words.Verdict(c.Verdict);
            table.AddRow(
                Markup.Escape(Words.Phase(findings.PhaseOf(c)).Replace('-', ' ')),
                Markup.Escape($"{c.Band.Observable.Place} {MeasureUnits.Name(c.Band.Observable.Measure)}"),
                Markup.Escape(ConditionText.Format(c.Band.Observable.Condition)),
                Markup.Escape(shown.Text(c.Reading)),
                Markup.Escape($"{shown.NumberText(c.Band.Low)} … {shown.NumberText(c.Band.High)}"),
                c.Verdict == Verdict.In ? verdict : $"[bold]{verdict}[/]");
        }

        Terminal.Console.Write(table);
        if (findings.Beliefs.Doubtful is { } doubtful) Terminal.Console.WriteLine($"Doubtful: {doubtful.Words}");
        return Out(findings);
    }

    protected override bool WriteJson(Findings findings, VisitSettings settings)
    {
        Write(new CompareDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            Bands = JsonOf.Bands(findings, settings.System),
            Comparisons = JsonOf.Comparisons(findings, settings.System),
        });
        return Out(findings);
    }

    private static bool Out(Findings findings) => findings.Beliefs.Comparisons.Any(c => c.Verdict != Verdict.In);
}
