using System.ComponentModel;
using Emberwright.Cli.Json;
using Emberwright.Diagnosis;
using Emberwright.Visits;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>What is probably wrong, how sure, and why.</summary>
internal sealed class SuspectsCommand(Terminal terminal) : VisitCommand<SuspectsCommand.Settings>(terminal)
{
    internal sealed class Settings : VisitSettings
    {
        [CommandOption("--explain")]
        [Description("Say of each suspect where its probability before comes from, and what every piece of evidence did to it")]
        public bool Explain { get; init; }
    }

    private const double WorthShowing = 0.01;

    protected override bool WriteText(Findings findings, Settings settings)
    {
        var beliefs = findings.Beliefs;
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        Stops.Write(Terminal, findings);

        var table = NewTable(("now", true), ("before", true), ("suspect", false), ("because (× on the odds)", false));
        foreach (var s in beliefs.Suspects.Where(s => s.Probability >= WorthShowing).Take(8))
        {
            var because = string.Join("; ", s.Because.Take(3).Select(b => $"{b.Words} ×{b.Factor:0.##}"));
            table.AddRow($"{s.Probability:P0}", $"{s.Prior:P0}", Markup.Escape(s.Name), Markup.Escape(because));
        }

        Terminal.Console.Write(table);

        if (settings.Explain) Explain(beliefs);

        var areas = NewTable(("area", false), ("restriction, or leak, as found → now", false));
        foreach (var a in beliefs.Areas) areas.AddRow(Markup.Escape(a.Name), RestrictionWords.Sentence(a));
        Terminal.Console.Write(areas);

        foreach (var alike in beliefs.Alike)
            Terminal.Console.WriteLine($"Today's readings cannot tell these apart: {string.Join(", ", alike.Faults.Select(findings.NameOfFault))}."
                + (alike.Separator is { } check ? $" To separate them: {findings.NameOfCheck(check)}." : ""));
        if (beliefs.Doubtful is { } doubtful) Terminal.Console.WriteLine($"Doubtful reading: {doubtful.Words}");
        if (beliefs.NoListedCauseFits) Terminal.Console.WriteLine("No listed cause fits these readings.");
        if (beliefs.CannotTell) Terminal.Console.WriteLine("Cannot tell yet: nothing stands out from the evidence so far.");
        foreach (var note in beliefs.Notes) Terminal.Console.WriteLine(note);
        return findings.NeedsAttention;
    }

    private void Explain(Beliefs beliefs)
    {
        foreach (var s in beliefs.Suspects.Where(s => s.Probability >= WorthShowing).Take(8))
        {
            Terminal.Console.WriteLine($"{s.Name}: {s.Prior:P1} before any evidence{(s.PriorOrigin is { } origin ? $" ({origin.TrimEnd('.')})" : "")}, {s.Probability:P1} now.");
            foreach (var b in s.Because) Terminal.Console.WriteLine($"  ×{b.Factor:0.##}  {b.Words}");
        }
    }

    protected override bool WriteJson(Findings findings, Settings settings)
    {
        Write(new SuspectsDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            Suspects = JsonOf.Suspects(findings),
            Areas = JsonOf.Areas(findings),
            Doubtful = JsonOf.Doubtful(findings),
            Alike = JsonOf.Alike(findings),
            Stops = JsonOf.Stops(findings),
            NoListedCauseFits = findings.Beliefs.NoListedCauseFits,
            CannotTell = findings.Beliefs.CannotTell,
            Notes = findings.Beliefs.Notes,
        });
        return findings.NeedsAttention;
    }
}
