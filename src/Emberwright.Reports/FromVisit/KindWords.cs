using Emberwright.Reports.Wording;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.FromVisit;

/// <summary>How the report speaks for each kind of visit.</summary>
internal static class KindWords
{
    /// <summary>What the document is.</summary>
    public static string Heading(VisitKind kind) => kind switch
    {
        VisitKind.Service => Say.Of("kind.service-report"),
        VisitKind.Breakdown => Say.Of("kind.breakdown-report"),
        VisitKind.Inspection => Say.Of("kind.inspection-evidence"),
        VisitKind.Commissioning => Say.Of("kind.commissioning-record"),
        VisitKind.Warranty => Say.Of("kind.warranty-pack"),
        VisitKind.Decommissioning => Say.Of("kind.decommissioning-record"),
    };

    /// <summary>Over what was found.</summary>
    public static string Found(VisitKind kind) => kind switch
    {
        VisitKind.Service => Say.Of("kind.what-we-found"),
        VisitKind.Breakdown => Say.Of("kind.what-was-wrong"),
        VisitKind.Inspection => Say.Of("kind.what-we-saw-and-measured"),
        VisitKind.Commissioning => Say.Of("kind.how-it-stands"),
        VisitKind.Warranty => Say.Of("kind.what-was-wrong"),
        VisitKind.Decommissioning => Say.Of("kind.how-we-found-it"),
    };

    /// <summary>Over what was done.</summary>
    public static string Did(VisitKind kind) => kind switch
    {
        VisitKind.Inspection => Say.Of("kind.what-we-did-and-what-this-page"),
        VisitKind.Commissioning => Say.Of("kind.what-we-did-and-proved"),
        _ => Say.Of("kind.what-we-did"),
    };

    /// <summary>A sentence that every document of this kind carries under what was done; null for none.</summary>
    public static string? Standing(VisitKind kind) => kind switch
    {
        VisitKind.Inspection => Say.Of("kind.evidence-of-one-days-state-for-whoever"),
        VisitKind.Commissioning => Say.Of("kind.what-was-read-today-is-this-stoves"),
        VisitKind.Warranty => Say.Of("kind.the-part-removed-is-kept-with-its"),
        VisitKind.Decommissioning => Say.Of("kind.it-may-not-be-put-into-use"),
        _ => null,
    };
}
