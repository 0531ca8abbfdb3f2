using System.ComponentModel;
using System.Text;
using Emberwright.Diagnosis;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Firm;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>What closed visits teach: causes, good parts renewed, comebacks, minutes.</summary>
internal sealed class LearnCommand(Terminal terminal) : Command<LearnCommand.Settings>
{
    internal sealed class Settings : StoveSettings
    {
        [CommandOption("--write-priors <FILE>")]
        [Description("Write the firm's own rates, for the option --priors of other commands")]
        public string? Priors { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var files = new VisitFiles(terminal).Read(settings.Files);
        VisitSummary[] visits = [.. files.Visits.Select(SummaryOf.Visit)];
        try
        {
            if (settings.Priors is { } priors) Terminal.Write(priors, Encoding.UTF8.GetBytes(FirmRates.Write(FirmRates.Of(visits))), "--write-priors");
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }

        var learnt = Learning.Of(visits);
        if (settings.Json) terminal.Out.WriteLine(System.Text.Json.JsonSerializer.Serialize(Document(learnt), Json.JsonOf.Options));
        else WriteText(learnt);
        return files.Troubled ? ExitCodes.BadInput : ExitCodes.Ok;
    }

    private static object Document(Learning learnt) => new
    {
        Patterns = learnt.Patterns.Select(p => new { p.Pattern, p.Visits, p.Unclear, Found = p.Found.Select(f => new { Fault = f.Key, Times = f.Value }) }),
        GoodParts = learnt.GoodParts.Select(g => new { g.Visit.Visit, g.Action, Probability = Math.Round(g.Probability, 4) }),
        Comebacks = learnt.Comebacks.Select(c => new { First = c.First.Visit, Again = c.Again.Visit, c.Cause }),
        Minutes = learnt.Minutes.Select(m => new { Action = m.Work, m.Times, Median = Math.Round(m.Median, 1) }),
    };

    private void WriteText(Learning learnt)
    {
        foreach (var pattern in learnt.Patterns)
        {
            terminal.Console.MarkupLineInterpolated($"[bold]{pattern.Pattern}[/], based on {pattern.Visits} of your visits, {pattern.Unclear} of them unclear");
            foreach (var (fault, times) in pattern.Found.Take(8)) terminal.Console.WriteLine($"  {times,4} × {Name(fault)}");
        }

        terminal.Console.WriteLine($"Good parts renewed: {learnt.GoodParts.Count}. Comebacks within a month: {learnt.Comebacks.Count}.");
        foreach (var cause in learnt.Comebacks.GroupBy(c => c.Cause).OrderByDescending(g => g.Count())) terminal.Console.WriteLine($"  {cause.Count(),4} × after {Name(cause.Key)}");
        foreach (var taken in learnt.Minutes.Take(12)) terminal.Console.WriteLine($"  {taken.Median,4:0} min {taken.Work} (of {taken.Times})");
    }

    private static string Name(string fault) => fault == Suspect.Nothing ? "nothing wrong" : FaultList.All.FirstOrDefault(f => f.Id == fault)?.Name ?? fault;
}
