using System.Collections.Immutable;
using Emberwright.Diagnosis;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Moment = Emberwright.Reports.Pictures.Profile.Moment;

namespace Emberwright.Reports.FromVisit;

/// <summary>Lays a visit out as its report: what the journal says and what was concluded from it, in the report's order.</summary>
public static class VisitReport
{
    /// <summary>The report's input.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="beliefs">What diagnosis concluded; null when nothing could be computed.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    /// <param name="units">Units the figures are written in.</param>
    /// <param name="pictureOf">A photo's bytes by its blob reference; empty when it is not on this device.</param>
    /// <param name="contact">Address and telephone of the firm, one line.</param>
    /// <param name="letterhead">The firm with logo and colour; null prints the name the visit states.</param>
    public static ReportInput Of(
        Visit visit, Beliefs? beliefs, string engineVersion, UnitSystem units, Func<string, ImmutableArray<byte>> pictureOf, string contact = "", Firm? letterhead = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(pictureOf);
        // What was signed stays as it was signed, whatever the engine would say today.
        if (visit.Seal is { } signed) beliefs = SealedBeliefs.Of(signed.Body.Figures) ?? beliefs;
        var flue = visit.Seal is { } sealedFlue ? SealedBeliefs.FlueGas(sealedFlue.Body.Figures) : FlueGasOfVisit.Of(visit);
        var predicted = visit.Seal is { } sealedThen ? SealedBeliefs.Predicted(sealedThen.Body.Figures) : Prediction.Of(visit, beliefs);
        var kind = visit.Call?.VisitKind ?? VisitKind.Service;
        var review = SignOff.Review(visit, kind, beliefs?.Comparisons, beliefs?.Stops);
        var customer = new CustomerPage(visit, beliefs, units, pictureOf);
        var shownFirst = MostRead(visit, Phase.AsFound, null);
        return new ReportInput
        {
            Firm = letterhead ?? new(visit.Call?.Firm ?? "", contact),
            Customer = CustomerPage.Known(visit.Customer?.Name),
            Address = CustomerPage.Known(visit.Customer?.Address),
            Heading = KindWords.Heading(kind),
            FoundTitle = KindWords.Found(kind),
            DidTitle = KindWords.Did(kind),
            At = visit.Seal?.Entry.At ?? (visit.Journal.Entries is [.., var last] ? last.At : default),
            Technician = visit.Call?.Technician ?? "",
            Appliance = ApplianceLine(visit),
            Answer = customer.Answer,
            Found = [.. customer.Found],
            Did = [.. customer.Did, .. new[] { KindWords.Standing(kind) }.OfType<string>()],
            ShouldDo = [.. customer.ShouldDo],
            Handed = [.. visit.Of<HandoverBody>().SelectMany(h => h.Body.Shown).Distinct().Select(ObservableName.Capital)],
            Next = customer.Next,
            Signatures = [.. customer.Signatures],
            Site = [.. SiteLine.Of(visit, units)],
            Notice = NoticeOf(visit),
            FlueGas = [.. FlueGasOfVisit.Rows(flue, units == UnitSystem.Us)],
            Records = [.. VisitRecords.Of(visit, kind, units)],
            Trends = [.. VisitTrends.Of(visit, beliefs)],
            Pattern = PatternOf(visit),
            Panels = PatternOf(visit) is { } pattern ? [.. CardedAnatomy.Of(pattern, StoveWords.Card(visit)).Panels] : [],
            Visit = visit.Id,
            ProfileFound = ProfileOf(visit, beliefs, Phase.AsFound, shownFirst, units, predicted),
            ProfileLeft = ProfileOf(visit, beliefs, Phase.AsLeft, shownFirst, units, []),
            Circuits = VisitWiring.Of(visit),
            Areas = [.. AreaChanges.Of(beliefs, visit.Epoch > 0)],
            Readings = [.. FigureRows.Readings(visit, beliefs)],
            Suspects = [.. FigureRows.Suspects(visit, beliefs, units)],
            SuspectNotes = [.. FigureRows.Notes(beliefs)],
            Proofs = [.. visit.Of<ProofBody>().GroupBy(p => p.Body.Proof).Select(same => FigureRows.Proof(same.Last().Body))],
            Instruments = [.. visit.Of<InstrumentBody>().GroupBy(i => i.Body.Name, StringComparer.OrdinalIgnoreCase).Select(same => FigureRows.Instrument(same.Last().Body, visit.Day))],
            Parts = [.. visit.Of<PartBody>().Select(p => FigureRows.Part(p.Body)), .. visit.Labour.Select(l => FigureRows.Labour(l.Body))],
            Limitations = [.. review.Limitations.Select(Say.Term), .. SealLines(visit)],
            Sources = [.. Sources(beliefs)],
            Photos = [.. visit.Of<PhotoBody>().Select(p => new ReportPhoto(ObservableName.Capital(EntryWords.Of(p.Body)), pictureOf(p.Body.Photo)) { Pair = p.Body.Area is { } area ? AreaName.Of(area) : null, After = p.Body.Moment == Visits.Journal.Moment.After })],
            Seal = visit.Seal?.Body.Hash,
            EngineVersion = visit.Seal?.Body.Engine ?? engineVersion,
            Units = units,
        };
    }

    private static IEnumerable<string> SealLines(Visit visit)
    {
        if (visit.Seal is not { } seal) yield break;
        if (!seal.Intact) yield return Say.Of("report.what-was-sealed-is-no-longer-whole");
        if (seal.Erased.Count > 0)
            yield return seal.Erased.Count == 1 ? Say.Of("report.one-entry-erased") : Say.Of("report.entries-erased", seal.Erased.Count);
        if (seal.Addenda.Count > 0)
            yield return seal.Addenda.Count == 1 ? Say.Of("report.1-entry-came-after-the-visit-was") : Say.Of("report.entries-came-after-the-visit-was-sealed", seal.Addenda.Count);
    }

    // The pattern's switch as the card corrects it; where its opening pressure was measured today, that one.
    private static VacuumSwitch? SwitchOf(Visit visit)
    {
        if (PatternOf(visit)?.Switch is not { } usual) return null;
        var card = StoveWords.Card(visit);
        var listed = usual with { SensePort = card?.SensePort ?? usual.SensePort, OpensPa = card?.SwitchOpensPa ?? usual.OpensPa, ClosesPa = card?.SwitchClosesPa ?? usual.ClosesPa };
        var tried = visit.Readings.LastOrDefault(r => r.Body is { Place: "switch-opens", Measure: Measure.Pressure });
        return tried is null ? listed : listed with { OpensPa = Math.Abs(tried.Body.Si) };
    }

    private static Pattern? PatternOf(Visit visit) => visit.Appliance is { } stove ? PatternLibrary.Find(stove.Pattern) : null;

    // The notice that stands; one lifted later is history.
    private static StopUse? NoticeOf(Visit visit) => visit.Of<NoticeBody>().LastOrDefault() is { Body: { Lifted: false } stands } fact
        ? new(PlainWords.Sentence(stands.Reason), stands.ReleasedBy is { } who ? PlainWords.Sentence(ObservableName.Capital(who)) : "", CustomerPage.Known(stands.ReadTo), stands.Signed, fact.At)
        : null;

    private static string ApplianceLine(Visit visit)
    {
        var line = StoveWords.Name(visit);
        return visit.Appliance?.Serial is { } serial ? Say.Of("report.serial", line, serial) : line;
    }

    // The wanted condition if it was read; else the one with most pressures; on equal terms fan only, which every stove can show.
    private static Condition? MostRead(Visit visit, Phase phase, Condition? wanted) => Pressures(visit, phase).GroupBy(r => r.Body.Condition)
        .OrderByDescending(same => same.Key == wanted).ThenByDescending(same => same.Select(r => r.Body.Place).Distinct().Count()).ThenByDescending(same => same.Key == Condition.FanOnly)
        .Select(same => (Condition?)same.Key).FirstOrDefault();

    private static IEnumerable<Reading> Pressures(Visit visit, Phase phase) => visit.Readings.Where(r => r.Phase == phase && r.Body.Measure == Measure.Pressure);

    private static Pictures.Profile.ProfileInput? ProfileOf(Visit visit, Beliefs? beliefs, Phase phase, Condition? wanted, UnitSystem units, IReadOnlyList<Predicted> predicted)
    {
        if (beliefs is null || MostRead(visit, phase, wanted) is not { } shown) return null;
        var read = Pressures(visit, phase).Where(r => r.Body.Condition == shown).GroupBy(r => r.Body.Place).ToDictionary(same => same.Key, same => same.Last().Body.Si);
        var last = (visit.Past?.LastAsLeft ?? []).Where(r => r.Measure == Measure.Pressure && r.Condition == shown)
            .GroupBy(r => r.Place).ToDictionary(same => same.Key, same => same.Last().Si);
        return VisitProfile.Of(shown, beliefs.Bands, read, phase == Phase.AsFound ? Moment.Found : Moment.Left, last, units, SwitchOf(visit), PatternOf(visit), predicted);
    }

    private static IEnumerable<string> Sources(Beliefs? beliefs)
    {
        if (beliefs is null) yield break;
        var origins = beliefs.Bands.Select(b => b.Origin).Distinct().ToArray();
        if (origins.Length > 0)
            yield return Say.Of("report.healthy-figures-computed-for-this-construction-v", string.Join(", ", origins.Select(Say.Term)));
        if (beliefs.Areas.Count > 0) yield return Say.Of("report.limits-of-areas-where-a-restriction-counts", Say.Term(AreaChanges.LimitOrigin));
        foreach (var source in beliefs.Stops.Select(s => s.Source).Distinct()) yield return Say.Term(source);
    }
}
