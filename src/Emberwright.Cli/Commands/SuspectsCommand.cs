using Emberwright.Cli.Json;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>What is probably wrong, how sure, and why.</summary>
internal sealed class SuspectsCommand(Terminal terminal) : VisitCommand<VisitSettings>(terminal)
{
    private const double WorthShowing = 0.01;

    protected override bool WriteText(Findings findings, VisitSettings settings)
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

        var areas = NewTable(("area", false), ("restriction, or leak, as found", false), ("now", false));
        foreach (var a in beliefs.Areas)
            areas.AddRow(Markup.Escape(a.Name), RestrictionWords.Sentence(a.Parameter, a.AsFound), RestrictionWords.Sentence(a.Parameter, a.Now));
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

    protected override bool WriteJson(Findings findings, VisitSettings settings)
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
