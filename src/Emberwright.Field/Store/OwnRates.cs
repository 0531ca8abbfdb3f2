using Emberwright.Diagnosis.Rates;
using Emberwright.Visits.Firm;

namespace Emberwright.Field.Store;

/// <summary>
/// The firm's own rates of faults and fouling and its minutes: learned from its closed visits when that is asked for, kept
/// on this phone, and below what its people set in the book. Suspects and planner go by them.
/// </summary>
public sealed class OwnRates(JournalStore store, Office office)
{
    private const string Kept = "rates", KeptFrom = "rates-visits", Unused = "rates-unused";
    private IReadOnlyDictionary<string, PatternRates> learnt = new Dictionary<string, PatternRates>();
    private Task? opening;

    /// <summary>How many closed visits they were learned from; null when nothing was learned yet.</summary>
    public int? From { get; private set; }

    /// <summary>Whether suspects and planner go by them.</summary>
    public bool Used { get; private set; } = true;

    /// <summary>Reads what is kept; once.</summary>
    public Task Open() => opening ??= Read();

    /// <summary>The rates of a pattern; null when there are none of the firm's own, or they are not to be used.</summary>
    public PatternRates? Of(string pattern) => Used ? FirmRates.With(learnt, office.Book).GetValueOrDefault(pattern) : null;

    /// <summary>What was learned of a pattern, whether used or not.</summary>
    public PatternRates? Learnt(string pattern) => learnt.GetValueOrDefault(pattern);

    /// <summary>Learns anew.</summary>
    /// <param name="visits">Lines of every visit.</param>
    public async Task Learn(IReadOnlyList<VisitSummary> visits)
    {
        await Open();
        learnt = FirmRates.Of(visits);
        From = visits.Count(v => v.State == VisitState.SignedOff);
        await store.KeepSetting(Kept, FirmRates.Write(learnt));
        await store.KeepSetting(KeptFrom, $"{From}");
    }

    /// <summary>Chooses whether suspects and planner go by them.</summary>
    public Task Use(bool use) => store.KeepSetting(Unused, (Used = use) ? "" : "yes");

    private async Task Read()
    {
        await office.Open();
        Used = await store.Setting(Unused) is not "yes";
        From = int.TryParse(await store.Setting(KeptFrom), out var visits) ? visits : null;
        if (await store.Setting(Kept) is not { } json) return;
        try
        {
            learnt = RatesFile.Read(json);
        }
        catch (Emberwright.Stove.InputException)
        {
            // Of another version: what it rests on is all here, and it is learned again when asked.
            From = null;
        }
    }
}
