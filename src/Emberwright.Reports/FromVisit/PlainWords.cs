using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Reports.Wording;
using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>The trade's findings and work in the words of someone who owns a stove and does not service one.</summary>
internal static class PlainWords
{
    // What a cleaning cleans, as its owner says it; null for any other work.
    private static string? Cleaned(string action) => action switch
    {
        "clean-burn-pot" => Say.Of("plain.the-burn-pot"),
        "clean-ash-passages" => Say.Of("plain.the-ash-passages"),
        "clean-exchanger" => Say.Of("plain.the-heat-exchanger"),
        "clean-combustion-blower" => Say.Of("plain.the-combustion-blower"),
        "clean-room-air-blower" => Say.Of("plain.the-room-air-blower"),
        "clean-vent" => Say.Of("plain.the-vent"),
        "clean-tee" => Say.Of("plain.the-tee-of-the-vent"),
        "clean-intake" => Say.Of("plain.the-air-intake"),
        "clean-hose" => Say.Of("plain.the-hose-of-the-vacuum-switch"),
        "clean-igniter-passage" => Say.Of("plain.the-igniters-passage"),
        "clean-proof-disc" => Say.Of("plain.the-switch-that-proves-the-fire"),
        "clean-thermocouple" => Say.Of("plain.the-thermocouple"),
        "clean-exhaust-probe" => Say.Of("plain.the-exhaust-probe"),
        ActionList.FullService => Say.Of("plain.ash-passages-both-blowers-vent-and-burn"),
        _ => null,
    };

    /// <summary>What blocked a passage, and how much of it; null when it is not worth a customer's line.</summary>
    public static string? Blocked(RestrictionEstimate area)
    {
        // Said only when it is surely there: nine chances in ten that at least a tenth was shut.
        if (area.AsFound is not { Median: >= 0.2, Low: >= 0.1 } found) return null;
        var share = Share(found.Median);
        return area.Parameter switch
        {
            Parameter.AshPassages => Say.Of("plain.ash-had-closed-of-the-passages-behind", share),
            Parameter.Exchanger => Say.Of("plain.ash-and-soot-had-closed-of-the", share),
            Parameter.Vent => Say.Of("plain.the-vent-was-closed", share),
            Parameter.Intake => Say.Of("plain.the-air-intake-was-closed", share),
            Parameter.BurnPot => Say.Of("plain.of-the-burn-pots-air-holes-were", Capital(share)),
            Parameter.Wheel => Say.Of("plain.dirt-on-its-wheel-had-taken-of", share),
            Parameter.RoomAir => Say.Of("plain.lint-had-taken-of-the-warm-air", share),
            _ => null,
        };
    }

    /// <summary>All work done, in as few sentences as it takes.</summary>
    public static IEnumerable<string> Work(IReadOnlyList<string> actions)
    {
        var cleaned = actions.Select(Cleaned).OfType<string>().ToArray();
        if (cleaned.Length > 0) yield return Say.Of("plain.cleaned", List(cleaned));
        foreach (var action in actions.Where(a => Cleaned(a) is null))
        {
            var cure = CatalogueWords.Action(action);
            yield return cure is { Cures.Count: 1 } && Fault(cure.Cures[0]) is { } fault ? Say.Of("plain.put-right", Lower(fault)) : Sentence(Capital(CatalogueWords.ActionName(action)));
        }
    }

    /// <summary>"about half", from a share.</summary>
    public static string Share(double share) => share switch
    {
        < 0.29 => Say.Of("plain.about-a-quarter"),
        < 0.42 => Say.Of("plain.about-a-third"),
        < 0.58 => Say.Of("plain.about-half"),
        < 0.71 => Say.Of("plain.about-two-thirds"),
        < 0.83 => Say.Of("plain.about-three-quarters"),
        _ => Say.Of("plain.nearly-all"),
    };

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => Say.Of("plain.and", string.Join(", ", words.SkipLast(1)), words[^1]),
    };

    /// <summary>With a full stop, once.</summary>
    public static string Sentence(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' or '”' ? words : words + ".";

    /// <summary>With a small first letter, unless it begins an abbreviation.</summary>
    public static string Lower(string words) =>
        words.Length > 1 && char.IsUpper(words[0]) && !char.IsUpper(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;

    private static string Capital(string words) => ObservableName.Capital(words);

    private static string? Fault(string id) => Stove.Faults.FaultList.All.FirstOrDefault(f => f.Id == id) is { } fault ? Say.Term(fault.Name) : null;
}
