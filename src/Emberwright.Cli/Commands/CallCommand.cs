using Emberwright.Cli.Attending;
using Emberwright.Cli.Json;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>The telephone call: emergency first, then what to ask, what to tell, what to agree, what to bring.</summary>
internal sealed class CallCommand(Terminal terminal) : VisitCommand<VisitSettings>(terminal)
{
    protected override bool WriteText(Findings findings, VisitSettings settings)
    {
        var plan = Plan(findings);
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        if (plan.Emergency.Stands)
        {
            CallText.WriteEmergency(Terminal.Console, plan.Emergency);
            return true;
        }

        Stops.Write(Terminal, findings);
        if (!plan.Emergency.Asked) CallText.WriteFirstQuestion(Terminal.Console, plan.Emergency);
        CallText.WriteQuestions(Terminal.Console, plan.Questions);
        CallText.WriteOutcome(Terminal.Console, plan);
        return true;
    }

    protected override bool WriteJson(Findings findings, VisitSettings settings)
    {
        var plan = Plan(findings);
        Write(new CallDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            Emergency = new JsonEmergency(plan.Emergency.Question.Question, plan.Emergency.Asked, plan.Emergency.Stands, plan.Emergency.Say),
            Questions = [.. plan.Questions.Select(q => JsonOf.Check(q, null))],
            Advice = plan.Advice,
            Booking = plan.Booking,
            Minutes = plan.Minutes,
            Parts = [.. plan.Parts.Select(p => new JsonPart(p.Action, p.Name, JsonOf.Rounded(p.Probability), JsonOf.Rounded(p.Worth), p.OnVan))],
            Tools = [.. plan.Tools.Select(t => new JsonTool(ToolWords.Of(t.Tool), JsonOf.Rounded(t.Probability), t.For))],
            Stops = JsonOf.Stops(findings),
        });
        return true;
    }

    private static CallPlan Plan(Findings findings) => Call.Plan(findings.Catalogue, Tariff.Default, findings.Posterior, findings.Situation);
}
