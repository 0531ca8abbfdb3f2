using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>How a fault is found out: the quickest check that shows it plainly.</summary>
internal static class Confirmation
{
    /// <summary>A sign shows a fault plainly from this probability on.</summary>
    private const double Plain = 0.6;

    /// <summary>
    /// What the stove says of itself, what is heard and smelled, and which load stands still points to a fault and does not
    /// prove it: a motor without power stands as still as a dead one.
    /// </summary>
    private static readonly IReadOnlyList<string> Hearsay =
        ["code", "lamps", "noise", "smell", Rules.RunsNow, "feed-pulse", "feed-drop", "igniter-glow", "combustion-blower-run", "room-blower-run", "flame"];

    /// <summary>And from this ratio to the usual probability on.</summary>
    private const double Ratio = 6;

    /// <summary>The quickest check that shows a fault plainly, or null when none does.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="catalogue">The pattern's catalogue.</param>
    public static Check? Of(Fault fault, Catalogue catalogue) => catalogue.Checks
        .Where(c => c.Kind is not (CheckKind.Ask or CheckKind.Clean) && Shows(c, fault, catalogue))
        .OrderBy(c => fault.ProvedBy.Count == 0 || fault.ProvedBy.Contains(c.Id) ? 0 : 1)
        .ThenBy(c => c.Minutes)
        .ThenBy(c => c.Id, StringComparer.Ordinal)
        .FirstOrDefault();

    /// <summary>The signs, to be had without asking, that show a fault plainly.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="catalogue">The pattern's catalogue.</param>
    public static IReadOnlyList<string> Telling(Fault fault, Catalogue catalogue) =>
    [
        .. catalogue.Signs.Where(s => fault.Symptoms.Any(m => m.Sign == s.Id && IsPlain(m, s)))
            .Select(s => s.Id).Where(id => catalogue.Checks.Any(c => c.Kind != CheckKind.Ask && c.Id != Rules.TestRun && c.Signs.Contains(id))),
    ];

    private static bool IsPlain(Symptom symptom, Sign sign) =>
        !Hearsay.Contains(sign.Id) && symptom.Probability >= Plain && symptom.Probability >= Ratio * sign.Outcomes[sign.IndexOf(symptom.Outcome)].Usual;

    /// <summary>True when a check shows a fault plainly.</summary>
    public static bool Shows(Check check, Fault fault, Catalogue catalogue) =>
        fault.ProvedBy.Contains(check.Id)
        || check.Signs.Any(id => catalogue.Sign(id) is { } sign && fault.Symptoms.Any(s => s.Sign == id && IsPlain(s, sign)))
        || fault.Fouling is { } fouling && check.Signs.Any(id => catalogue.Sign(id)?.Margin?.Parameter == fouling.Parameter);
}
