using Emberwright.Diagnosis.Checks;

namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// What a deed may change of what is seen and read, so that looking again may show something else: whatever a fault that it
/// cures shows, and whatever follows from a parameter that it draws anew. Anything else seen before it still holds.
/// </summary>
internal static class Renewal
{
    /// <summary>True when a sign may look otherwise after a deed.</summary>
    /// <param name="done">What was done.</param>
    /// <param name="sign">Id of the sign.</param>
    /// <param name="catalogue">Faults and signs of the pattern.</param>
    public static bool Changes(WorkAction done, string sign, Catalogue catalogue)
    {
        if (sign == Rules.RunsNow) return true;
        if (catalogue.Sign(sign)?.Margin is { } margin && (margin.Parameter is { } p ? done.Redraws.Any(r => r.Parameter == p) : done.Redraws.Count > 0)) return true;
        foreach (var cured in done.Cures)
        {
            if (catalogue.Fault(cured) is not { } fault) continue;
            foreach (var symptom in fault.Symptoms)
            {
                if (symptom.Sign == sign) return true;
            }
        }

        return false;
    }

    /// <summary>True when readings may be otherwise after a deed.</summary>
    /// <param name="done">What was done.</param>
    /// <param name="catalogue">Faults of the pattern.</param>
    public static bool ChangesReadings(WorkAction done, Catalogue catalogue) =>
        done.Redraws.Count > 0 || done.Cures.Any(c => catalogue.Fault(c) is { Circuit.Count: > 0 } or { Shifts.Count: > 0 });
}
