using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>How checks are said.</summary>
public static class CheckWords
{
    /// <summary>How a check is done.</summary>
    public static string Of(CheckKind kind) => kind switch
    {
        CheckKind.Ask => T("CheckWords.ask"),
        CheckKind.ReadStove => T("CheckWords.read-off-the-stove"),
        CheckKind.Look => T("CheckWords.look"),
        CheckKind.Measure => T("CheckWords.measure"),
        CheckKind.Try => T("CheckWords.try"),
        CheckKind.Clean => T("CheckWords.clean"),
        CheckKind.Reset => T("CheckWords.reset"),
        CheckKind.Swap => T("CheckWords.swap-a-known-good-part"),
    };

    /// <summary>A remedy that is recommended by itself, as a check with nothing to read: it is done, and then known.</summary>
    public static Check? AsCheck(WorkAction? action) => action is null ? null : new(
        action.Id, action.Name,
        action.Kind switch
        {
            RemedyKind.Clean => CheckKind.Clean,
            RemedyKind.Replace => CheckKind.Swap,
            RemedyKind.Reset or RemedyKind.Adjust or RemedyKind.Advise => CheckKind.Reset,
        },
        action.Minutes, action.PartCost, action.Cautions, CheckNeeds.None, [], [], action.Cures, action.Patterns, action.Id);

    /// <summary>What must be so first and is not recorded yet.</summary>
    public static IEnumerable<string> Unmet(CheckNeeds needs, Visit visit)
    {
        var safe = visit.Of<SafeBody>().Select(fact => fact.Body.Step).ToHashSet();
        if (needs.HasFlag(CheckNeeds.Cold) && !safe.Contains(SafeStep.Cool)) yield return T("CheckWords.first-fire-out-and-stove-cold");
        if (needs.HasFlag(CheckNeeds.Unplugged) && !safe.Contains(SafeStep.ProvedDead)) yield return T("CheckWords.first-plug-out-and-proved-dead");
        if (needs.HasFlag(CheckNeeds.PanelsOff)) yield return T("CheckWords.panels-come-off-for-this");
        if (needs.HasFlag(CheckNeeds.Powered)) yield return T("CheckWords.plugged-in-with-the-board-calling");
        if (needs.HasFlag(CheckNeeds.Burning)) yield return T("CheckWords.a-fire-burning-and-it-is");
    }
}
