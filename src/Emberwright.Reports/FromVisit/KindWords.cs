using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>How the report speaks for each kind of visit.</summary>
internal static class KindWords
{
    /// <summary>What the document is.</summary>
    public static string Heading(VisitKind kind) => kind switch
    {
        VisitKind.Service => "Service report",
        VisitKind.Breakdown => "Breakdown report",
        VisitKind.Inspection => "Inspection evidence",
        VisitKind.Commissioning => "Commissioning record",
        VisitKind.Warranty => "Warranty pack",
        VisitKind.Decommissioning => "Decommissioning record",
    };

    /// <summary>Over what was found.</summary>
    public static string Found(VisitKind kind) => kind switch
    {
        VisitKind.Service => "What we found",
        VisitKind.Breakdown => "What was wrong",
        VisitKind.Inspection => "What we saw and measured",
        VisitKind.Commissioning => "How it stands",
        VisitKind.Warranty => "What was wrong",
        VisitKind.Decommissioning => "How we found it",
    };

    /// <summary>Over what was done.</summary>
    public static string Did(VisitKind kind) => kind switch
    {
        VisitKind.Inspection => "What we did, and what this page is",
        VisitKind.Commissioning => "What we did and proved",
        _ => "What we did",
    };

    /// <summary>A sentence that every document of this kind carries under what was done; null for none.</summary>
    public static string? Standing(VisitKind kind) => kind switch
    {
        VisitKind.Inspection => "Evidence of one day’s state, for whoever asked for it. It is no permit and no certificate: whether the installation complies is for the authority, the listing and the licensed trades to say.",
        VisitKind.Commissioning => "What was read today is this stove’s baseline: the next visit is measured against it.",
        VisitKind.Warranty => "The part removed is kept with its tag until the maker has decided.",
        VisitKind.Decommissioning => "It may not be put into use again without a new commissioning.",
        _ => null,
    };
}
