using System.Collections.Immutable;
using Emberwright.Field.Store;
using Emberwright.Reports;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Papers;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>Which paper of a visit.</summary>
public enum PaperKind
{
    /// <summary>The report.</summary>
    Report,
    /// <summary>The stop-use notice that stands.</summary>
    Notice,
    /// <summary>The tag for door or plug.</summary>
    Tag,
    /// <summary>Weekly care.</summary>
    Card,
    /// <summary>The quote.</summary>
    Quote,
    /// <summary>The visit as a form to fill in by hand.</summary>
    Form,
}

/// <summary>Lays out the papers of a visit with the photos and the letterhead this phone keeps.</summary>
public sealed class VisitPrint(JournalStore store, Preferences preferences)
{
    /// <summary>The paper.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="findings">What is concluded so far.</param>
    public async Task<Paper> Lay(PaperKind kind, Visit visit, Findings? findings)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var format = preferences.Units == UnitSystem.Us ? PageFormat.Letter : PageFormat.A4;
        var firm = preferences.Letterhead(visit.Call?.Firm);
        return kind switch
        {
            PaperKind.Report => ReportPdf.Lay(await Input(visit, findings, firm), format),
            PaperKind.Notice => Papers.StopUseNotice(await Input(visit, findings, firm), format),
            PaperKind.Tag => Papers.DoorTag(await Input(visit, findings, firm)),
            PaperKind.Card => Papers.HandoverCard(await Input(visit, findings, firm), format),
            PaperKind.Quote => Papers.Quote(VisitPapers.Quote(visit, findings?.Beliefs, firm, Engine.Version), format),
            PaperKind.Form => Papers.BlankForm(VisitPapers.Form(visit.Call?.VisitKind ?? VisitKind.Service, findings?.Case.Pattern, firm, Engine.Version), format),
        };
    }

    private async Task<ReportInput> Input(Visit visit, Findings? findings, Firm firm)
    {
        var pictures = new Dictionary<string, ImmutableArray<byte>>();
        var wanted = visit.Of<PhotoBody>().Select(p => p.Body.Photo).Concat(visit.Of<SignatureBody>().Select(s => s.Body.Image).OfType<string>()).Where(Blob.IsReference).Distinct();
        foreach (var reference in wanted)
            if (await store.Picture(reference["sha256:".Length..]) is { } bytes) pictures[reference] = [.. bytes];
        return VisitReport.Of(visit, findings?.Beliefs, Engine.Version, preferences.Units, reference => pictures.GetValueOrDefault(reference, []), letterhead: firm);
    }
}
