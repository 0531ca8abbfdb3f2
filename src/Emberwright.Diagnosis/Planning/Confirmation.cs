using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>How a fault is found out: the quickest check that shows it plainly.</summary>
internal static class Confirmation
{
    /// <summary>A sign shows a fault plainly from this probability on.</summary>
    private const double Plain = 0.6;

    /// <summary>And from this ratio to the usual probability on.</summary>
    private const double Telling = 6;

    /// <summary>The quickest check that shows a fault plainly, or null when none does.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="catalogue">The pattern's catalogue.</param>
    public static Check? Of(Fault fault, Catalogue catalogue) => catalogue.Checks
        .Where(c => c.Kind is not (CheckKind.Ask or CheckKind.Clean) && Shows(c, fault, catalogue))
        .OrderBy(c => c.Minutes)
        .ThenBy(c => c.Id, StringComparer.Ordinal)
        .FirstOrDefault();

    /// <summary>True when a check shows a fault plainly.</summary>
    public static bool Shows(Check check, Fault fault, Catalogue catalogue) =>
        fault.ProvedBy.Contains(check.Id)
        || check.Signs.Any(id => catalogue.Sign(id) is { } sign && fault.Symptoms.Any(s => s.Sign == id
            && s.Probability >= Plain && s.Probability >= Telling * sign.Outcomes[sign.IndexOf(s.Outcome)].Usual))
        || fault.Fouling is { } fouling && check.Signs.Any(id => catalogue.Sign(id)?.Margin?.Parameter == fouling.Parameter);
}
