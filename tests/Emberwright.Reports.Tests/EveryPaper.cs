using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Papers;
using Emberwright.Reports.Tests.FromVisit;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.Tests;

/// <summary>Every paper there is, by name: what the golden pictures hold and what another language must reach.</summary>
internal static class EveryPaper
{
    public static Firm Firm { get; } = new("Tamarack & Vale Hearth Service", "Low Orrin, county of Orrin · 555 0142");

    /// <summary>What is typed into the visits below, beside the demo's own words.</summary>
    public const string Typed = """
        CO in the room rose to 41 ppm while it burned a licensed technician, after cure and measurement Ottilie Brandreth
        door rope ordered igniter USD as the label asks 60 mm behind, 150 mm at the sides type PL, gasketed joints hours of burning
        exhaust too hot combustion blower fitted claim with the maker fuel removed from the hopper supply cut and tagged vent capped
        Photo ash passages behind the fire-back panel wheel tee of the vent burn pot room-air rating before after
        """;

    private static readonly Visit Service = DemoVisits.Load("healthy-service");

    private static readonly Visit Stopped = DemoVisits.With(
        Service, new NoticeBody("CO in the room rose to 41 ppm while it burned", "a licensed technician, after cure and measurement", "Ottilie Brandreth", Signed: true));

    public static IReadOnlyDictionary<string, Func<PageFormat, UnitSystem, Paper>> All { get; } = new Dictionary<string, Func<PageFormat, UnitSystem, Paper>>
    {
        ["report"] = (format, units) => ReportPdf.Lay(Closed(Service, units), format),
        ["report-open"] = (format, units) => ReportPdf.Lay(Of(DemoVisits.Load("ash-passages-full"), units), format),
        ["report-stopped"] = (format, units) => ReportPdf.Lay(Of(Stopped, units), format),
        ["report-early"] = (format, units) => ReportPdf.Lay(Of(DemoVisits.Load("lights-then-stops"), units), format),
        ["report-photos"] = (format, units) => ReportPdf.Lay(Closed(Service, units) with { Photos = Photos.Some(12) }, format),
        ["inspection"] = (format, units) => ReportPdf.Lay(Closed(Kinds.Inspection, units), format),
        ["commissioning"] = (format, units) => ReportPdf.Lay(Closed(Kinds.Commissioning, units), format),
        ["warranty"] = (format, units) => ReportPdf.Lay(Closed(Kinds.Warranty, units), format),
        ["decommissioning"] = (format, units) => ReportPdf.Lay(Closed(Kinds.Decommissioning, units), format),
        ["notice"] = (format, units) => Papers.Papers.StopUseNotice(Of(Stopped, units), format),
        ["tag-stop"] = (_, units) => Papers.Papers.DoorTag(Of(Stopped, units)),
        ["tag"] = (_, units) => Papers.Papers.DoorTag(Closed(Service, units)),
        ["card"] = (format, units) => Papers.Papers.HandoverCard(Closed(Service, units), format),
        ["quote"] = (format, _) => Papers.Papers.Quote(Quoted, format),
        ["form"] = (format, _) => Papers.Papers.BlankForm(VisitPapers.Form(VisitKind.Service, Underfed.Pattern, Firm, "0.1.0"), format),
        ["form-unknown"] = (format, _) => Papers.Papers.BlankForm(VisitPapers.Form(VisitKind.Commissioning, null, Firm, "0.1.0"), format),
    };

    private static QuoteInput Quoted
    {
        get
        {
            var visit = DemoVisits.With(DemoVisits.With(DemoVisits.With(Service,
                new PartBody("door rope", "DR-9", "ordered")), new PartBody("igniter", "IG-4", "ordered")), new ConsentBody("door rope", true, "85 USD", InWriting: true));
            var beliefs = DemoVisits.Concluded(visit);
            return VisitPapers.Quote(visit, beliefs with { Suspects = [.. beliefs.Suspects.Select(s => s with { Probability = s.AsFound })] }, Firm, "0.1.0");
        }
    }

    /// <summary>A visit's report while it is open.</summary>
    public static ReportInput Of(Visit visit, UnitSystem units) => Printed(visit, DemoVisits.Concluded(visit), units);

    /// <summary>The same, signed. Its seal is one that does not change with the engine's last digits, and so neither does the code.</summary>
    public static ReportInput Closed(Visit visit, UnitSystem units)
    {
        var beliefs = DemoVisits.Concluded(visit);
        return Printed(DemoVisits.Sealed(visit, SealedFigures.Of(beliefs, visit)), beliefs, units) with { Seal = SampleReport.Cleaned.Seal };
    }

    private static ReportInput Printed(Visit visit, Beliefs? beliefs, UnitSystem units) =>
        VisitReport.Of(visit, beliefs, "0.1.0", units, _ => ImmutableArray<byte>.Empty, letterhead: Firm);

    // The demo's visit turned into the kinds the demo lacks, each with what that kind puts on record.
    private static class Kinds
    {
        public static Visit Inspection { get; } = As(VisitKind.Inspection,
            new ObservationBody("clearances", "as the label asks", Words: "60 mm behind, 150 mm at the sides"),
            new ObservationBody("vent-class", "type PL, gasketed joints"), new CounterBody("hours of burning", "4120 h"));

        public static Visit Commissioning { get; } = As(VisitKind.Commissioning,
            new ObservationBody("clearances", "as the label asks"), new ObservationBody("vent-class", "type PL, gasketed joints"));

        public static Visit Warranty { get; } = As(VisitKind.Warranty,
            new CodeBody("E3", "exhaust too hot", 4), new PartBody("combustion blower", "CB-77", "fitted", "T-0093"), new ConsentBody("claim with the maker", true, By: "Ottilie Brandreth"));

        public static Visit Decommissioning { get; } = As(VisitKind.Decommissioning,
            new ActionBody("fuel removed from the hopper", null, true), new ActionBody("supply cut and tagged", null, true), new ActionBody("vent capped", null, true));

        private static Visit As(VisitKind kind, params EntryBody[] more) =>
            more.Prepend(Service.Call! with { VisitKind = kind }).Aggregate(Service, DemoVisits.With);
    }
}
