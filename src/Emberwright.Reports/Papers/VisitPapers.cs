using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;

namespace Emberwright.Reports.Papers;

/// <summary>The quote and the blank form of a visit.</summary>
public static class VisitPapers
{
    private const double Likely = 0.5;

    /// <summary>What is proposed: parts ordered, and the remedy of every likely fault that nothing was done about; with what was agreed so far.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="beliefs">What diagnosis concludes now; null leaves remedies out.</param>
    /// <param name="firm">The firm.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    public static QuoteInput Quote(Visit visit, Beliefs? beliefs, Firm firm, string engineVersion)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(firm);
        var consents = visit.Of<ConsentBody>().Select(c => c.Body).ToArray();
        string Amount(string about) => consents.LastOrDefault(c => c.Given && string.Equals(c.About, about, StringComparison.OrdinalIgnoreCase))?.Amount ?? "";
        return new QuoteInput(
            firm, CustomerPage.Known(visit.Customer?.Name), CustomerPage.Known(visit.Customer?.Address), StoveWords.Name(visit), visit.Call?.Technician ?? "",
            visit.Journal.Entries is [.., var last] ? last.At : default,
            [
                .. Remedies(beliefs).Select(r => new QuoteLine(r.What, r.Why, Amount(r.What))),
                .. visit.Of<PartBody>().Where(p => p.Body.Use is not (null or "fitted" or "removed")).Select(p => new QuoteLine(ObservableName.Capital(Part(p.Body)), "", Amount(p.Body.Part))),
            ],
            [.. consents.Select(c => $"{ObservableName.Capital(c.About)}: {string.Join(", ", new[] { c.Given ? Agreed : Refused, c.Amount, c.InWriting ? InWriting : null }.OfType<string>())}.")],
            engineVersion);
    }

    /// <summary>The form of a visit: its pattern's ports in the conditions of the cold three-state test and at high burn.</summary>
    /// <param name="kind">What the visit is for.</param>
    /// <param name="pattern">The pattern; null when it is not known yet.</param>
    /// <param name="firm">The firm.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    public static FormInput Form(VisitKind kind, Pattern? pattern, Firm firm, string engineVersion)
    {
        ArgumentNullException.ThrowIfNull(firm);
        var empty = Visit.Fold(VisitFile.Read("{\"format\":\"emberwright-visit\",\"version\":1,\"visit\":\"blank\"}\n").Journal);
        return new FormInput(
            firm, ObservableName.Capital(Say.Term(EnumWords.Of(kind))), pattern,
            [.. ((SafeStep[])[SafeStep.SwitchedOff, SafeStep.BurntOut, SafeStep.Cool, SafeStep.Unplugged, SafeStep.ProvedDead, SafeStep.EmbersInMetalCan, SafeStep.FibrePrecautions]).Select(s => (SafeWords.Done(s), SafeWords.Caution(s)))],
            [.. Readings(pattern)],
            [.. ServiceAreas.InOrder.Prepend(Area.BurnPot).Select(AreaName.Of)],
            [.. Enum.GetValues<Proof>().Select(ProofWords.Of)],
            [.. SignOff.Review(empty, kind, null, null).Missing.Select(m => Say.Term(m.Words)).Distinct()],
            engineVersion);
    }

    private static IEnumerable<(string, string)> Readings(Pattern? pattern)
    {
        var ports = pattern?.Ports.Select(p => Say.Term(p.Name)).ToArray() ?? [Say.Of("common.firebox"), Say.Of("common.blower-inlet"), Say.Of("form.vent-collar")];
        foreach (var state in (string[])[Say.Of("form.fan-only-closed"), Say.Of("form.door-open"), Say.Of("form.intake-stopped"), Say.Of("form.blower-off"), Say.Of("form.high-burn")])
        {
            foreach (var port in ports) yield return (state, port);
            if (state != Say.Of("form.high-burn")) continue;
            foreach (var reading in (string[])[Say.Of("form.oxygen-dry"), Say.Of("form.carbon-monoxide-flue"), Say.Of("form.exhaust-temperature"), Say.Of("form.carbon-monoxide-room-after-30-min")]) yield return (state, reading);
        }

        yield return (Say.Of("form.shutdown"), Say.Of("form.carbon-monoxide-room"));
    }

    private static IEnumerable<(string What, string Why)> Remedies(Beliefs? beliefs) =>
        from suspect in beliefs?.Suspects ?? []
        where suspect.Fault is not (Suspect.Nothing or Suspect.Unlisted) && suspect.Probability >= Likely
        let fault = FaultList.All.FirstOrDefault(f => f.Id == suspect.Fault)
        where fault is not null
        select (Say.Term(fault.Remedy.Words), Say.Of("form.likely", Say.Term(suspect.Name), Print.Percent(suspect.Probability)));

    private static string Agreed => Say.Of("common.agreed");

    private static string Refused => Say.Of("common.refused");

    private static string InWriting => Say.Of("common.in-writing");

    private static string Part(PartBody part) => string.Join(", ", new[] { part.Part, part.Number }.Where(w => !string.IsNullOrEmpty(w)));
}
