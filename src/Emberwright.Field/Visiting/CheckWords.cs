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
        CheckKind.Ask => "Ask",
        CheckKind.ReadStove => "Read off the stove",
        CheckKind.Look => "Look",
        CheckKind.Measure => "Measure",
        CheckKind.Try => "Try",
        CheckKind.Clean => "Clean",
        CheckKind.Reset => "Reset",
        CheckKind.Swap => "Swap a known good part",
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
        if (needs.HasFlag(CheckNeeds.Cold) && !safe.Contains(SafeStep.Cool)) yield return "First: fire out and stove cold.";
        if (needs.HasFlag(CheckNeeds.Unplugged) && !safe.Contains(SafeStep.ProvedDead)) yield return "First: plug out and proved dead.";
        if (needs.HasFlag(CheckNeeds.PanelsOff)) yield return "Panels come off for this.";
        if (needs.HasFlag(CheckNeeds.Powered)) yield return "Plugged in, with the board calling. Live parts are within reach.";
        if (needs.HasFlag(CheckNeeds.Burning)) yield return "A fire burning, and it is safe to burn.";
    }
}
