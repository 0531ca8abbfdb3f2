using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove;

namespace Emberwright.Reports.FromVisit;

/// <summary>The trade's findings and work in the words of someone who owns a stove and does not service one.</summary>
internal static class PlainWords
{
    private static readonly Dictionary<string, string> Cleaned = new()
    {
        ["clean-burn-pot"] = "the burn pot",
        ["clean-ash-passages"] = "the ash passages",
        ["clean-exchanger"] = "the heat exchanger",
        ["clean-combustion-blower"] = "the combustion blower",
        ["clean-room-air-blower"] = "the room-air blower",
        ["clean-vent"] = "the vent",
        ["clean-tee"] = "the tee of the vent",
        ["clean-intake"] = "the air intake",
        ["clean-hose"] = "the hose of the vacuum switch",
        ["clean-igniter-passage"] = "the igniter’s passage",
        ["clean-proof-disc"] = "the switch that proves the fire",
        ["clean-thermocouple"] = "the thermocouple",
        ["clean-exhaust-probe"] = "the exhaust probe",
        [ActionList.FullService] = "ash passages, both blowers, vent and burn pot",
    };

    /// <summary>What blocked a passage, and how much of it; null when it is not worth a customer's line.</summary>
    public static string? Blocked(RestrictionEstimate area)
    {
        // Said only when it is surely there: nine chances in ten that at least a tenth was shut.
        if (area.AsFound is not { Median: >= 0.2, Low: >= 0.1 } found) return null;
        var share = Share(found.Median);
        return area.Parameter switch
        {
            Parameter.AshPassages => $"Ash had closed {share} of the passages behind the fire.",
            Parameter.Exchanger => $"Ash and soot had closed {share} of the heat exchanger’s passages.",
            Parameter.Vent => $"The vent was {share} closed.",
            Parameter.Intake => $"The air intake was {share} closed.",
            Parameter.BurnPot => $"{Capital(share)} of the burn pot’s air holes were closed.",
            Parameter.Wheel => $"Dirt on its wheel had taken {share} of the combustion blower’s strength.",
            Parameter.RoomAir => $"Lint had taken {share} of the warm air from the room-air blower.",
            _ => null,
        };
    }

    /// <summary>All work done, in as few sentences as it takes.</summary>
    public static IEnumerable<string> Work(IReadOnlyList<string> actions)
    {
        var cleaned = actions.Where(Cleaned.ContainsKey).Select(a => Cleaned[a]).ToArray();
        if (cleaned.Length > 0) yield return $"Cleaned {List(cleaned)}.";
        foreach (var action in actions.Where(a => !Cleaned.ContainsKey(a)))
        {
            var cure = CatalogueWords.Action(action);
            yield return cure is { Cures.Count: 1 } && Fault(cure.Cures[0]) is { } fault ? $"Put right: {Lower(fault)}." : Sentence(Capital(CatalogueWords.ActionName(action)));
        }
    }

    /// <summary>"about half", from a share.</summary>
    public static string Share(double share) => share switch
    {
        < 0.29 => "about a quarter",
        < 0.42 => "about a third",
        < 0.58 => "about half",
        < 0.71 => "about two thirds",
        < 0.83 => "about three quarters",
        _ => "nearly all",
    };

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}",
    };

    /// <summary>With a full stop, once.</summary>
    public static string Sentence(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' or '”' ? words : words + ".";

    /// <summary>With a small first letter, unless it begins an abbreviation.</summary>
    public static string Lower(string words) =>
        words.Length > 1 && char.IsUpper(words[0]) && !char.IsUpper(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;

    private static string Capital(string words) => ObservableName.Capital(words);

    private static string? Fault(string id) => Stove.Faults.FaultList.All.FirstOrDefault(f => f.Id == id)?.Name;
}
