using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Attending;

/// <summary>One thing to be written down for a check.</summary>
internal abstract record Item;

/// <summary>An outcome of a sign, told or seen.</summary>
internal sealed record SignItem(Sign Sign, bool Told) : Item;

/// <summary>A reading.</summary>
internal sealed record ReadItem(Observable Observable, Band? Band) : Item;

/// <summary>A step of making safe.</summary>
internal sealed record SafeItem(SafeStep Step) : Item;

/// <summary>A deed, done or not.</summary>
internal sealed record DeedItem(string Action, string Words) : Item;

/// <summary>What is to be written down for the check in hand, in order: first what is seen and read, then what is done about it.</summary>
internal static class Sheet
{
    /// <summary>Id of the question asked on the telephone before any other.</summary>
    public const string Emergency = "emergency";

    private static readonly SafeStep[] Safe = [SafeStep.SwitchedOff, SafeStep.BurntOut, SafeStep.Cool, SafeStep.Unplugged, SafeStep.ProvedDead];

    public static IReadOnlyList<Item> Of(string id, Findings findings)
    {
        var catalogue = findings.Catalogue;
        if (id == Planner.MakeSafe)
        {
            var done = findings.Visit.Of<SafeBody>().Select(f => f.Body.Step).ToHashSet();
            return [.. Safe.Where(s => !done.Contains(s)).Select(s => new SafeItem(s))];
        }

        if (id == Emergency) return findings.Situation.Sees(Emergency) ? [] : [new SignItem(catalogue.Sign(Emergency)!, Told: true)];
        if (catalogue.Check(id) is not { } check) return catalogue.Action(id) is { } action ? [new DeedItem(action.Id, action.Name)] : [];
        var open = findings.Situation.Untold(check, catalogue);
        return
        [
            .. open.Signs.Select(s => new SignItem(catalogue.Sign(s)!, check.Kind == CheckKind.Ask)),
            .. open.Reads.Select(r => new ReadItem(r, findings.Beliefs.Bands.FirstOrDefault(b => b.Observable == r))),
            .. check.Action is { } deed ? new[] { new DeedItem(deed, check.Name) } : [],
        ];
    }
}
