using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Store;

/// <summary>A stove with all that is known of it.</summary>
/// <param name="Key">Its key after joining.</param>
/// <param name="Visits">Its visits, by day.</param>
/// <param name="Forecast">How it fouls; null when no visit says which pattern it is of.</param>
public sealed record StoveHistory(string Key, IReadOnlyList<VisitSummary> Visits, FoulingForecast? Forecast);

/// <summary>
/// Keeps the derived lines of visits and stoves up to date in the store, so that lists and search read no journal.
/// A line that is missing is made anew; losing all of them loses nothing.
/// </summary>
public sealed class Shelf(JournalStore store, Office office, TimeProvider time)
{
    private const int Batch = 20;
    private readonly Dictionary<string, IReadOnlyDictionary<Parameter, FoulingEnd>> limits = [];

    /// <summary>Raised after lines changed.</summary>
    public event Action? Changed;

    /// <summary>How many visits still lack their line.</summary>
    public int Waiting { get; private set; }

    /// <summary>A visit in a line.</summary>
    public static VisitSummary Summary(Visit visit) =>
        VisitSummary.Of(visit, visit.Seal is { Intact: true, Body.Figures: var figures } ? SealedBeliefs.Of(figures) : null);

    /// <summary>Makes the lines of visits and of their stoves anew.</summary>
    public async Task Put(params IReadOnlyList<Visit> visits)
    {
        if (visits.Count == 0) return;
        await office.Open();
        VisitSummary[] summaries = [.. visits.Select(Summary)];
        await store.KeepLines(summaries, []);
        // Before its label was read a stove went by its household, and before that by its visit.
        await PutStoves(summaries.SelectMany(s => new[] { s.Stove, StoveKey.Of(null, null, s.Customer, s.Address), "visit/" + s.Visit }).OfType<string>());
        Changed?.Invoke();
    }

    /// <summary>Makes the lines of stoves anew, after they were joined or parted.</summary>
    public async Task PutStoves(IEnumerable<string> keys)
    {
        await office.Open();
        var lines = new List<(string, StoveLine?)>();
        foreach (var key in keys.Distinct())
        {
            var into = office.Book.Into("stove", key);
            if (into != key) lines.Add((key, null));
            var visits = await store.VisitsOf([.. office.Book.Joins("stove", into)]);
            var before = await store.Stove(into);
            var newest = visits.OrderBy(v => v.Day).LastOrDefault();
            // A forecast rests on the visits it was made from: with another last visit or another state of it, it is made anew.
            var forecast = before?.Last.Visit == newest?.Visit && before?.Last.State == newest?.State ? before?.Forecast : null;
            lines.Add((into, StoveLine.Of(into, visits, forecast, await MoreWords(into))));
        }

        await store.KeepLines([], lines);
        Changed?.Invoke();
    }

    /// <summary>Makes missing lines, a few at a time so that the screen keeps moving.</summary>
    public async Task CatchUp(IReadOnlyList<string> missing, Func<IEnumerable<KeptVisit>, Task<IReadOnlyList<Visit>>> fold)
    {
        Waiting = missing.Count;
        foreach (var batch in missing.Chunk(Batch))
        {
            var visits = await fold(await store.Journals(batch));
            await Task.Delay(1);
            await Put(visits);
            Waiting -= batch.Length;
        }

        Waiting = 0;
        Changed?.Invoke();
    }

    /// <summary>A stove with its visits and its forecast, which is kept beside it.</summary>
    public async Task<StoveHistory?> History(string key)
    {
        await office.Open();
        var into = office.Book.Into("stove", key);
        VisitSummary[] visits = [.. (await store.VisitsOf([.. office.Book.Joins("stove", into)])).OrderBy(v => v.Day).ThenBy(v => v.Booked)];
        if (visits.Length == 0) return null;
        var forecast = await Forecast(visits);
        if (StoveLine.Of(into, visits, ForecastLine.Of(forecast), await MoreWords(into)) is { } line) await store.KeepLines([], [(into, line)]);
        return new(into, visits, forecast);
    }

    /// <summary>Forecasts stoves that have none yet, one at a time.</summary>
    /// <param name="most">At most so many.</param>
    /// <param name="cancellation">Ends it between two stoves.</param>
    public async Task Foretell(int most, CancellationToken cancellation)
    {
        foreach (var key in await store.Unforetold(most))
        {
            if (cancellation.IsCancellationRequested) return;
            await History(key);
            await Task.Delay(1, CancellationToken.None);
        }

        Changed?.Invoke();
    }

    private async Task<string> MoreWords(string stove)
    {
        if (office.Book.StoveOf(stove) is not { } record) return "";
        var customer = await office.Customer(record.Customer);
        return string.Join('\n', new[] { record.Maker, record.Model, record.Serial, record.Label, record.Place, customer?.Name, customer?.Address, customer?.Phone, customer?.Access }.Where(w => !string.IsNullOrEmpty(w)));
    }

    private async Task<FoulingForecast?> Forecast(VisitSummary[] visits)
    {
        var today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
        if (visits.LastOrDefault(v => v.Pattern is not null) is not { } last) return null;
        if (!limits.TryGetValue(last.Visit, out var found))
        {
            if ((await store.Journals([last.Visit])) is not [var kept] || Findings.StoveOf(Visit.Fold(Book.Parse(kept).Journal)) is not { } stove) return null;
            limits[last.Visit] = found = FoulingEnd.Of(stove);
        }

        var seen = visits.Select(v => v.Seen).OfType<AreasSeen>().ToArray();
        var stated = office.Book.StoveOf(last.Stove) is { Customer: { } owner } && office.Book.Find<Customer>("customer", owner)?.FuelPerYear is { } fuel
            ? new FuelUse(Math.Clamp(fuel.Si / 1000, 0.01, 20)) : null;
        return SeasonsOfAStove.Forecast(seen, found, stated, today);
    }
}
