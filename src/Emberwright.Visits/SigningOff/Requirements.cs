using Emberwright.Visits.Journal;
using static Emberwright.Visits.SigningOff.PaperRequirements;
using static Emberwright.Visits.SigningOff.ProofRequirements;
using static Emberwright.Visits.SigningOff.ReadingRequirements;
using static Emberwright.Visits.SigningOff.WorkRequirements;

namespace Emberwright.Visits.SigningOff;

/// <summary>The list of each kind of visit, in the order of the work.</summary>
internal static class Requirements
{
    /// <summary>For an appliance under a stop-use notice, whatever the visit was for: no hot readings, no cleaning.</summary>
    public static IReadOnlyList<Requirement> OutOfService { get; } = [Isolated, NoticeServed, FaultPhoto, LeftUndone];

    private static readonly Requirement[] Proving = [AsLeft, InBand, SwitchMargin, TestFire, ShutdownCo, Proofs, InstrumentsInDate];

    private static readonly Requirement[] Service =
        [Stops, MadeSafe, AsFound, FourAreas, AreaPhotos, .. Proving, NextDue, CustomerSigned];

    private static readonly Requirement[] Breakdown =
        [Stops, Complaint, MadeSafe, AsFound, FourAreas, .. Proving, NextDue, CustomerSigned];

    private static readonly Requirement[] Inspection =
        [Stops, Identified, LabelPhoto, VentDescribed, Clearances, VentClass, AsFound, CustomerSigned];

    private static readonly Requirement[] Commissioning =
        [Stops, Identified, VentDescribed, Clearances, .. Proving, FlueAsLeft, Handover, NextDue, CustomerSigned];

    private static readonly Requirement[] Warranty =
        [Stops, Identified, LabelPhoto, Complaint, MadeSafe, AsFound, WarrantyPart, .. Proving, CustomerSigned];

    private static readonly Requirement[] Decommissioning =
        [Identified, MadeSafe, VentCapped, FuelRemoved, FaultPhoto, CustomerSigned];

    public static IReadOnlyList<Requirement> Of(VisitKind kind) => kind switch
    {
        VisitKind.Service => Service,
        VisitKind.Breakdown => Breakdown,
        VisitKind.Inspection => Inspection,
        VisitKind.Commissioning => Commissioning,
        VisitKind.Warranty => Warranty,
        VisitKind.Decommissioning => Decommissioning,
    };
}
