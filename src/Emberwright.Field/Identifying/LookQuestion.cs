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
        new("place", T("LookQuestion.where-does-it-stand"),
            [new("insert", T("LookQuestion.in-a-masonry-fireplace"), p => p.Form.IsInsert), new("free", T("LookQuestion.free-in-the-room"), p => !p.Form.IsInsert)]),
        new("heats", T("LookQuestion.what-does-it-heat"),
            [new("air", T("LookQuestion.air-through-a-grille"), p => !p.Heat.StreamIsWater), new("water", T("LookQuestion.water-with-pipes-and-a-pump"), p => p.Heat.StreamIsWater)]),
        new("feed", T("LookQuestion.how-does-fuel-reach-the-fire"),
            [new("falls", T("LookQuestion.it-falls-down-a-chute"), p => p.Form.Feed == FeedKind.Chute), new("below", T("LookQuestion.it-is-pushed-up-from-below"), p => p.Form.Feed == FeedKind.FromBelow)]),
        new("air", T("LookQuestion.where-does-the-combustion-air-come"),
            [
                new("pipe", T("LookQuestion.an-open-pipe-at-the-back"), p => p.Form.Intake == IntakeKind.Pipe),
                new("damper", T("LookQuestion.a-pipe-with-a-damper-set"), p => p.Form.Intake == IntakeKind.Damper),
                new("flapper", T("LookQuestion.a-pipe-with-a-flapper-that"), p => p.Form.Intake == IntakeKind.Flapper),
                new("duct", T("LookQuestion.a-sealed-duct-from-outdoors"), p => p.Form.Intake == IntakeKind.Duct),
            ]),
        new("proof", T("LookQuestion.what-tells-the-board-that-it"),
            [
                new("disc", T("LookQuestion.a-disc-on-the-exhaust"), p => p.Program.Proof.Kind == ProofKind.Disc),
                new("thermocouple", T("LookQuestion.a-thermocouple-in-the-firebox"), p => p.Program.Proof.Kind == ProofKind.Thermocouple),
                new("probe", T("LookQuestion.a-probe-in-the-exhaust"), p => p.Program.Proof.Kind == ProofKind.ExhaustProbe),
            ]),
        new("exchanger", T("LookQuestion.what-is-above-or-behind-the"),
            [
                new("tubes", T("LookQuestion.tubes-across-the-top"), p => p.Form.Exchanger is ExchangerKind.Tubes or ExchangerKind.ScrapedTubes),
                new("panel", T("LookQuestion.a-panel-that-swings-down-fins"), p => p.Form.Exchanger == ExchangerKind.SwingDownPanel),
                new("ducts", T("LookQuestion.upright-ducts-behind"), p => p.Form.Exchanger == ExchangerKind.Ducts),
                new("plates", T("LookQuestion.folded-plates"), p => p.Form.Exchanger == ExchangerKind.Plates),
                new("water-tubes", T("LookQuestion.upright-tubes-in-a-water-jacket"), p => p.Form.Exchanger == ExchangerKind.WaterTubes),
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
