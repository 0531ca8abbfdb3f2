using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>What a kind of visit puts on record beside its readings: identity, installation, the stove's own memory, warranty, consents.</summary>
internal static class VisitRecords
{
    public static IEnumerable<RecordBlock> Of(Visit visit, VisitKind kind, UnitSystem units)
    {
        IEnumerable<RecordBlock> all = kind switch
        {
            VisitKind.Inspection => [Identity(visit), Installation(visit, units), Seen(visit), Own(visit)],
            VisitKind.Commissioning => [Identity(visit), Installation(visit, units), HandedOver(visit)],
            VisitKind.Warranty => [Identity(visit), Claim(visit), Own(visit)],
            VisitKind.Decommissioning => [Identity(visit), TakenOut(visit)],
            _ => [Own(visit), Seen(visit)],
        };
        return all.Append(Agreed(visit)).Where(block => block.Rows.Length > 0);
    }

    private static RecordBlock Identity(Visit visit) => new(Say.Of("record.the-appliance"), Rows(
        (Say.Of("record.maker-and-model"), string.Join(' ', new[] { visit.Appliance?.Maker, visit.Appliance?.Model }.Where(w => !string.IsNullOrEmpty(w)))),
        (Say.Of("record.serial-number"), visit.Appliance?.Serial),
        (Say.Of("record.rating-label"), visit.Appliance?.Label),
        (Say.Of("record.age"), visit.Past?.AgeYears is { } years ? Say.Of("record.years", years.ToString("0.#", CultureInfo.InvariantCulture)) : null)));

    private static RecordBlock Installation(Visit visit, UnitSystem units)
    {
        var vent = visit.Site?.Vent;
        return new(Say.Of("record.the-installation"), Rows(
            (Say.Of("common.vent"), vent is null ? null : SiteLine.Vent(vent, units)),
            (Say.Of("record.class-of-vent-joints"), Observed(visit, "vent-class")),
            (Say.Of("record.clearances-to-combustibles"), Observed(visit, "clearances")),
            (Say.Of("common.combustion-air"), visit.Site?.OutsideAir switch { true => Say.Of("record.from-outdoors-through-a-kit"), false => Say.Of("record.from-the-room"), null => null }),
            (Say.Of("record.house"), visit.Site?.House)));
    }

    /// <summary>How it is installed, for the customer's page; empty when nothing of it was looked at.</summary>
    public static string InSentences(Visit visit, UnitSystem units) => Observed(visit, "clearances") is null && Observed(visit, "vent-class") is null
        ? ""
        : string.Join(' ', Installation(visit, units).Rows.Select(r => PlainWords.Sentence($"{ObservableName.Capital(r.Name)}: {r.Words}")));

    private static RecordBlock Seen(Visit visit) => new(Say.Of("record.what-was-seen"), [.. visit.Of<ObservationBody>()
        .Where(o => o.Body.Sign is not ("clearances" or "vent-class"))
        .Select(o => (CatalogueWords.Question(o.Body.Sign), string.Join(". ", new[] { CatalogueWords.Outcome(o.Body.Sign, o.Body.Outcome), o.Body.Words }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static RecordBlock Own(Visit visit) => new(Say.Of("record.what-the-stove-itself-says"),
    [
        .. visit.Of<CodeBody>().Select(c => (c.Body.Count is { } n ? Say.Of("record.code-logged", c.Body.Code, n) : Say.Of("record.code", c.Body.Code), c.Body.Meaning ?? Say.Of("record.meaning-not-known"))),
        .. visit.Of<CounterBody>().Select(c => (c.Body.Counter, c.Body.Value)),
        .. visit.Of<ParameterBody>().Select(p => (p.Body.Parameter, p.Body.Before is { } before ? Say.Of("record.before", p.Body.Value, before) : p.Body.Value)),
    ]);

    private static RecordBlock Claim(Visit visit) => new(Say.Of("record.the-claim"),
    [
        .. visit.Of<ComplaintBody>().Select(c => (Say.Of("record.complaint"), $"“{c.Body.Words}”")),
        .. visit.Of<PartBody>().Select(p => (Say.Term(p.Body.Use ?? "fitted"), string.Join(", ", new[] { p.Body.Part, p.Body.Number is { } number ? Say.Of("record.number", number) : null, p.Body.Tag is { } tag ? Say.Of("record.return-tag", tag) : Say.Of("record.no-return-tag-recorded") }.Where(w => w is not null)))),
    ]);

    private static RecordBlock TakenOut(Visit visit) => new(Say.Of("record.how-it-was-taken-out-of-use"),
        [.. visit.Of<ActionBody>().Where(a => a.Body.Done).Select(a => (a.Body.Area is { } area ? AreaName.Of(area) : Say.Of("record.work"), string.Join(": ", new[] { CatalogueWords.ActionName(a.Body.Action), a.Body.Outcome }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static RecordBlock HandedOver(Visit visit) => new(Say.Of("record.handed-over"),
    [
        .. visit.Of<HandoverBody>().SelectMany(h => Rows(
            (Say.Of("record.shown"), PlainWords.List([.. h.Body.Shown])),
            (Say.Of("record.fuel-lot"), h.Body.FuelLot),
            (Say.Of("record.co-alarm-good-until"), h.Body.CoAlarmUntil is { } until ? Say.Day(until) : null))),
    ]);

    private static RecordBlock Agreed(Visit visit) => new(Say.Of("record.what-was-agreed"),
        [.. visit.Of<ConsentBody>().Select(c => (c.Body.About, string.Join(", ", new[] { c.Body.Given ? Say.Of("common.agreed") : Say.Of("common.refused"), c.Body.Amount, c.Body.By is { } by ? Say.Of("record.by", CustomerPage.Known(by)) : null, c.Body.InWriting ? Say.Of("common.in-writing") : null }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static string? Observed(Visit visit, string sign) => visit.Of<ObservationBody>().LastOrDefault(o => o.Body.Sign == sign)?.Body is { } seen
        ? string.Join(". ", new[] { CatalogueWords.Outcome(sign, seen.Outcome), seen.Words }.Where(w => !string.IsNullOrEmpty(w)))
        : null;

    private static ImmutableArray<(string, string)> Rows(params (string Name, string? Words)[] rows) =>
        [.. rows.Where(r => !string.IsNullOrEmpty(r.Words)).Select(r => (r.Name, r.Words!))];
}
