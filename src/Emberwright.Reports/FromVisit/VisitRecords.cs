using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Reports.Pages;
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

    private static RecordBlock Identity(Visit visit) => new("The appliance", Rows(
        ("maker and model", string.Join(' ', new[] { visit.Appliance?.Maker, visit.Appliance?.Model }.Where(w => !string.IsNullOrEmpty(w)))),
        ("serial number", visit.Appliance?.Serial),
        ("rating label", visit.Appliance?.Label),
        ("age", visit.Past?.AgeYears is { } years ? $"{years.ToString("0.#", CultureInfo.InvariantCulture)} years" : null)));

    private static RecordBlock Installation(Visit visit, UnitSystem units)
    {
        var vent = visit.Site?.Vent;
        return new("The installation", Rows(
            ("vent", vent is null ? null : SiteLine.Vent(vent, units)),
            ("class of vent, joints", Observed(visit, "vent-class")),
            ("clearances to combustibles", Observed(visit, "clearances")),
            ("combustion air", visit.Site?.OutsideAir switch { true => "from outdoors through a kit", false => "from the room", null => null }),
            ("house", visit.Site?.House)));
    }

    /// <summary>How it is installed, for the customer's page; empty when nothing of it was looked at.</summary>
    public static string InSentences(Visit visit, UnitSystem units) => Observed(visit, "clearances") is null && Observed(visit, "vent-class") is null
        ? ""
        : string.Join(' ', Installation(visit, units).Rows.Select(r => PlainWords.Sentence($"{ObservableName.Capital(r.Name)}: {r.Words}")));

    private static RecordBlock Seen(Visit visit) => new("What was seen", [.. visit.Of<ObservationBody>()
        .Where(o => o.Body.Sign is not ("clearances" or "vent-class"))
        .Select(o => (CatalogueWords.Question(o.Body.Sign), string.Join(". ", new[] { CatalogueWords.Outcome(o.Body.Sign, o.Body.Outcome), o.Body.Words }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static RecordBlock Own(Visit visit) => new("What the stove itself says",
    [
        .. visit.Of<CodeBody>().Select(c => ($"code {c.Body.Code}{(c.Body.Count is { } n ? $", logged {n}×" : "")}", c.Body.Meaning ?? "meaning not known")),
        .. visit.Of<CounterBody>().Select(c => (c.Body.Counter, c.Body.Value)),
        .. visit.Of<ParameterBody>().Select(p => (p.Body.Parameter, p.Body.Before is { } before ? $"{p.Body.Value}, before {before}" : p.Body.Value)),
    ]);

    private static RecordBlock Claim(Visit visit) => new("The claim",
    [
        .. visit.Of<ComplaintBody>().Select(c => ("complaint", $"“{c.Body.Words}”")),
        .. visit.Of<PartBody>().Select(p => (p.Body.Use ?? "fitted", string.Join(", ", new[] { p.Body.Part, p.Body.Number is { } number ? $"number {number}" : null, p.Body.Tag is { } tag ? $"return tag {tag}" : "no return tag recorded" }.Where(w => w is not null)))),
    ]);

    private static RecordBlock TakenOut(Visit visit) => new("How it was taken out of use",
        [.. visit.Of<ActionBody>().Where(a => a.Body.Done).Select(a => (a.Body.Area is { } area ? AreaName.Of(area) : "work", string.Join(": ", new[] { CatalogueWords.ActionName(a.Body.Action), a.Body.Outcome }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static RecordBlock HandedOver(Visit visit) => new("Handed over",
    [
        .. visit.Of<HandoverBody>().SelectMany(h => Rows(
            ("shown", PlainWords.List([.. h.Body.Shown])),
            ("fuel lot", h.Body.FuelLot),
            ("CO alarm good until", h.Body.CoAlarmUntil?.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)))),
    ]);

    private static RecordBlock Agreed(Visit visit) => new("What was agreed",
        [.. visit.Of<ConsentBody>().Select(c => (c.Body.About, string.Join(", ", new[] { c.Body.Given ? "agreed" : "refused", c.Body.Amount, c.Body.By is { } by ? "by " + CustomerPage.Known(by) : null, c.Body.InWriting ? "in writing" : null }.Where(w => !string.IsNullOrEmpty(w)))))]);

    private static string? Observed(Visit visit, string sign) => visit.Of<ObservationBody>().LastOrDefault(o => o.Body.Sign == sign)?.Body is { } seen
        ? string.Join(". ", new[] { CatalogueWords.Outcome(sign, seen.Outcome), seen.Words }.Where(w => !string.IsNullOrEmpty(w)))
        : null;

    private static ImmutableArray<(string, string)> Rows(params (string Name, string? Words)[] rows) =>
        [.. rows.Where(r => !string.IsNullOrEmpty(r.Words)).Select(r => (r.Name, r.Words!))];
}
