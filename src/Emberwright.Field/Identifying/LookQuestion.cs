using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Patterns;

namespace Emberwright.Field.Identifying;

/// <summary>Something one sees on a stove in a few seconds and that tells patterns apart. What cannot be told rules nothing out.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Question">What to look at.</param>
/// <param name="Answers">What one may see, each with the patterns that look so.</param>
public sealed record LookQuestion(string Id, string Question, IReadOnlyList<LookAnswer> Answers)
{
    /// <summary>The six questions, quickest first. Common practice, no source.</summary>
    public static IReadOnlyList<LookQuestion> All { get; } =
    [
        new("place", "Where does it stand?",
            [new("insert", "In a masonry fireplace", p => p.Form.IsInsert), new("free", "Free in the room", p => !p.Form.IsInsert)]),
        new("heats", "What does it heat?",
            [new("air", "Air, through a grille", p => !p.Heat.StreamIsWater), new("water", "Water, with pipes and a pump", p => p.Heat.StreamIsWater)]),
        new("feed", "How does fuel reach the fire?",
            [new("falls", "It falls down a chute", p => p.Form.Feed == FeedKind.Chute), new("below", "It is pushed up from below", p => p.Form.Feed == FeedKind.FromBelow)]),
        new("air", "Where does the combustion air come in?",
            [
                new("pipe", "An open pipe at the back", p => p.Form.Intake == IntakeKind.Pipe),
                new("damper", "A pipe with a damper set by hand", p => p.Form.Intake == IntakeKind.Damper),
                new("flapper", "A pipe with a flapper that falls shut", p => p.Form.Intake == IntakeKind.Flapper),
                new("duct", "A sealed duct from outdoors", p => p.Form.Intake == IntakeKind.Duct),
            ]),
        new("proof", "What tells the board that it burns?",
            [
                new("disc", "A disc on the exhaust", p => p.Program.Proof.Kind == ProofKind.Disc),
                new("thermocouple", "A thermocouple in the firebox", p => p.Program.Proof.Kind == ProofKind.Thermocouple),
                new("probe", "A probe in the exhaust", p => p.Program.Proof.Kind == ProofKind.ExhaustProbe),
            ]),
        new("exchanger", "What is above or behind the fire?",
            [
                new("tubes", "Tubes across the top", p => p.Form.Exchanger is ExchangerKind.Tubes or ExchangerKind.ScrapedTubes),
                new("panel", "A panel that swings down, fins above it", p => p.Form.Exchanger == ExchangerKind.SwingDownPanel),
                new("ducts", "Upright ducts behind", p => p.Form.Exchanger == ExchangerKind.Ducts),
                new("plates", "Folded plates", p => p.Form.Exchanger == ExchangerKind.Plates),
                new("water-tubes", "Upright tubes in a water jacket", p => p.Form.Exchanger == ExchangerKind.WaterTubes),
            ]),
    ];
}

/// <summary>One thing one may see.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Words">In words.</param>
/// <param name="Fits">Whether a pattern looks so.</param>
public sealed record LookAnswer(string Id, string Words, Func<Pattern, bool> Fits);

/// <summary>A pattern with what speaks against it.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Against">Questions whose answers it does not fit.</param>
public sealed record Likeness(Pattern Pattern, IReadOnlyList<LookQuestion> Against)
{
    /// <summary>All patterns, those that fit every answer first, else in the library's order.</summary>
    /// <param name="answers">Answer by question; a question left out could not be told.</param>
    public static IReadOnlyList<Likeness> Of(IReadOnlyDictionary<string, string> answers) =>
    [
        .. PatternLibrary.All
            .Select(pattern => new Likeness(pattern, [.. LookQuestion.All.Where(question =>
                answers.TryGetValue(question.Id, out var said) && question.Answers.FirstOrDefault(a => a.Id == said) is { } answer && !answer.Fits(pattern))]))
            .OrderBy(likeness => likeness.Against.Count),
    ];
}
