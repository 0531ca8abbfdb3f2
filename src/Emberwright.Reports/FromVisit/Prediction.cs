using Emberwright.Diagnosis;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Reports.FromVisit;

/// <summary>A pressure the leading suspect would bring about.</summary>
/// <param name="Place">Port.</param>
/// <param name="Condition">State of the stove.</param>
/// <param name="Pa">Pressure against the room, Pa.</param>
/// <param name="Words">The supposition, e.g. "if ash passages are full".</param>
public sealed record Predicted(string Place, Condition Condition, double Pa, string Words);

/// <summary>
/// What the pressure profile would look like if the leading suspect were true: the virtual stove with the areas' medians as
/// found and the fault's mean change. A supposition, drawn dashed.
/// </summary>
public static class Prediction
{
    // Below this nothing leads; our own choice.
    private const double Leading = 0.3;

    /// <summary>The predictions in the conditions in which pressures were read as found; none when no suspect leads or it moves no air.</summary>
    public static IReadOnlyList<Predicted> Of(Visit visit, Beliefs? beliefs)
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (beliefs is null || visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) return [];
        var leading = beliefs.Suspects.Where(s => s.Fault is not (Suspect.Nothing or Suspect.Unlisted)).MaxBy(s => s.AsFound);
        if (leading is null || leading.AsFound < Leading || FaultList.All.FirstOrDefault(f => f.Id == leading.Fault) is not { } fault) return [];
        if (fault.Shifts.Count == 0 && fault.Fouling is null) return [];
        try
        {
            var stove = new VirtualStove(pattern, StoveWords.Card(visit), visit.StoveSite());
            var parameters = Parameters(beliefs, fault);
            return [.. Conditions(visit).SelectMany(condition => At(stove, parameters, condition, Say.Of("profile.if", PlainWords.Lower(Say.Term(leading.Name)))))];
        }
        catch (InputException)
        {
            // A site or card that makes no sense has been said elsewhere; the picture does without its supposition.
            return [];
        }
    }

    private static IEnumerable<Condition> Conditions(Visit visit) =>
        visit.AsFound.Where(r => r.Body.Measure == Measure.Pressure).Select(r => r.Body.Condition).Distinct();

    private static double[] Parameters(Beliefs beliefs, Fault fault)
    {
        var values = new double[Enum.GetValues<Parameter>().Length];
        foreach (var area in beliefs.Areas.Where(a => AreaChanges.IsPassage(a.Parameter)))
            if (area.AsFound.Median is > 0 and < 1) values[(int)area.Parameter] = Math.Log(1 - area.AsFound.Median);
        foreach (var shift in fault.Shifts) values[(int)shift.Parameter] += shift.Mean;
        return values;
    }

    private static IEnumerable<Predicted> At(VirtualStove stove, double[] parameters, Condition condition, string words)
    {
        var state = stove.Solve(parameters, condition);
        if (state.Status == SolveStatus.NotConverged) yield break;
        foreach (var port in stove.Pattern.Ports.Where(p => state.Knows(Measure.Pressure, p.Id)))
            if (state.Value(Measure.Pressure, port.Id) is var pa && double.IsFinite(pa)) yield return new(port.Id, condition, pa, words);
    }
}
