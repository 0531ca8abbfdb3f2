using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Spectre.Console;

namespace Emberwright.Cli.Attending;

/// <summary>A telephone call's plan as text.</summary>
internal static class CallText
{
    /// <summary>What to say while an emergency stands.</summary>
    public static void WriteEmergency(IAnsiConsole console, Emergency emergency)
    {
        console.WriteLine("EMERGENCY: say this now, ask nothing more.");
        foreach (var say in emergency.Say) console.WriteLine($"  {say}");
    }

    /// <summary>What is asked before anything else.</summary>
    public static void WriteFirstQuestion(IAnsiConsole console, Emergency emergency)
    {
        Head(console, "Ask first");
        console.WriteLine($"  {emergency.Question.Question}");
        console.WriteLine("  Yes to any: everybody out, emergency number from outside, hopper lid shut, plug left in. Nothing else is asked then.");
    }

    /// <summary>What is still worth asking.</summary>
    public static void WriteQuestions(IAnsiConsole console, IReadOnlyList<RecommendedCheck> questions)
    {
        if (questions.Count > 0) Head(console, "Then ask");
        foreach (var question in questions)
        {
            console.WriteLine($"  {question.Name}");
            console.WriteLine($"      {question.Because}");
        }
    }

    /// <summary>What to tell, agree and bring.</summary>
    public static void WriteOutcome(IAnsiConsole console, CallPlan plan)
    {
        List(console, "Tell the customer", plan.Advice);
        List(console, $"Agree for the visit (keep {Hours(plan.Minutes)} free)", plan.Booking);
        List(console, "Bring, likeliest needed first", plan.Parts.Select(p =>
            $"{p.Name}: needed {p.Probability:P0}, worth {p.Worth:0.##} of a second trip{(p.OnVan < 0.5 ? "; not usually on the van" : "")}"));
        List(console, "Have at hand", plan.Tools.Select(t => $"{ToolWords.Of(t.Tool)} ({t.Probability:P0}): {t.For}"));
    }

    private static void Head(IAnsiConsole console, string words)
    {
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{words}[/]");
    }

    private static void List(IAnsiConsole console, string head, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0) return;
        Head(console, head);
        foreach (var line in all) console.WriteLine($"  {line}");
    }

    private static string Hours(double minutes) => minutes % 60 == 0 ? $"{minutes / 60:0} h" : $"{Math.Floor(minutes / 60):0} h {minutes % 60:0} min";
}
