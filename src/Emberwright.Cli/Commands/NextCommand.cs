using Emberwright.Cli.Json;
using Emberwright.Diagnosis;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>The check most worth doing now, and the two next best.</summary>
internal sealed class NextCommand(Terminal terminal) : VisitCommand<NextSettings>(terminal)
{
    protected override bool WriteText(Findings findings, NextSettings settings)
    {
        findings = Looked(findings, settings);
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        Stops.Write(Terminal, findings);
        if (findings.NextCheck.Best is not { } best)
        {
            Terminal.Console.WriteLine("No check is worth its cost now: prove the stove and sign off.");
            return findings.Beliefs.Stops.Count > 0;
        }

        Write("Next", best);
        foreach (var other in findings.NextCheck.Alternatives) Write("Or", other);
        return true;
    }

    protected override bool WriteJson(Findings findings, NextSettings settings)
    {
        findings = Looked(findings, settings);
        Write(new NextDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            NextCheck = JsonOf.NextCheck(findings),
            Stops = JsonOf.Stops(findings),
        });
        return findings.NextCheck.Best is not null || findings.Beliefs.Stops.Count > 0;
    }

    private static Findings Looked(Findings findings, NextSettings settings) => settings.Depth == 1 ? findings : findings.Improving().Last();

    private void Write(string lead, RecommendedCheck check)
    {
        Terminal.Console.WriteLine();
        Terminal.Console.MarkupLineInterpolated($"[bold]{lead}: {check.Name}[/]");
        Terminal.Console.WriteLine($"  {check.Minutes:0.#} min, cost {check.Cost:0.##}. {check.Because}");
        foreach (var caution in check.Cautions) Terminal.Console.WriteLine($"  Caution: {caution}");
    }
}
