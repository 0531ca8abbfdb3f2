using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Microsoft.JSInterop;

namespace Emberwright.Field.Store;

/// <summary>A visit as it lies in the phone's store: the text of its file, line by line.</summary>
/// <param name="Visit">Visit id.</param>
/// <param name="Header">First line of the visit file.</param>
/// <param name="Demo">True for the visits that come with the app.</param>
/// <param name="Lines">Entries in the order they were written here, each as first written.</param>
public sealed record KeptVisit(string Visit, string Header, bool Demo, IReadOnlyList<string> Lines);

/// <summary>What a start is given.</summary>
/// <param name="Visits">Visits, whole.</param>
/// <param name="Count">How many visits there are.</param>
/// <param name="Missing">Visits whose derived line is missing.</param>
public sealed record KeptStart(IReadOnlyList<KeptVisit> Visits, int Count, IReadOnlyList<string> Missing);

/// <summary>The firm's book as it lies in the store.</summary>
/// <param name="Header">Its header; null when nothing was written yet.</param>
/// <param name="Lines">Its entries, each as first written.</param>
public sealed record KeptBook(string? Header, IReadOnlyList<string> Lines);

/// <summary>What a search found.</summary>
/// <param name="Count">How many stoves.</param>
/// <param name="Stoves">The first of them, as a JSON list.</param>
public sealed record KeptFound(int Count, string Stoves);

/// <summary>A visit's derived line as the store keeps it; its names are those of its indexes.</summary>
internal sealed record VisitRow(string Visit, string Stove, string Day, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? Open, string Json);

/// <summary>A stove's derived line as the store keeps it.</summary>
internal sealed record StoveRow(
    string Stove, string Day, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Due, string Text, bool Foretold, string? Json);

/// <summary>What room the phone gives.</summary>
/// <param name="Persisted">True when the browser promised not to clear the store by itself.</param>
/// <param name="Usage">Bytes used.</param>
/// <param name="Quota">Bytes allowed.</param>
public sealed record Space(bool Persisted, double Usage, double Quota);

/// <summary>
/// The phone's own store, in IndexedDB. Journals are only ever added to; a call that returns has reached the disk.
/// The rules are kept in <c>js/store.js</c>, where they also hold against this code.
/// </summary>
public sealed class JournalStore(IJSRuntime js)
{
    private readonly Lazy<Task<IJSObjectReference>> module = new(() => js.InvokeAsync<IJSObjectReference>("import", "./js/store.js").AsTask());

    /// <summary>What a start needs: the visits that are open, whole; or every visit where there are few.</summary>
    /// <param name="few">Up to how many are few.</param>
    public async Task<KeptStart> Start(int few) => JsonSerializer.Deserialize(await Ask<string>("start", few), StoreJson.Default.KeptStart)!;

    /// <summary>The visits made last, whole.</summary>
    public async Task<IReadOnlyList<KeptVisit>> LatestVisits(int limit) =>
        JsonSerializer.Deserialize(await Ask<string>("latestVisits", limit), StoreJson.Default.IReadOnlyListKeptVisit) ?? [];

    /// <summary>Visits by id, whole.</summary>
    public async Task<IReadOnlyList<KeptVisit>> Journals(IEnumerable<string> visits) =>
        JsonSerializer.Deserialize(await Ask<string>("journals", (object)visits.ToArray()), StoreJson.Default.IReadOnlyListKeptVisit) ?? [];

    /// <summary>Ids of every visit on this phone.</summary>
    public Task<string[]> VisitIds() => Ask<string[]>("visitIds");

    /// <summary>Lines of a stove's visits.</summary>
    /// <param name="stoves">Its keys.</param>
    public async Task<IReadOnlyList<VisitSummary>> VisitsOf(params string[] stoves) => Lines(await Ask<string>("visitsOf", (object)stoves), VisitSummaryJson.Read);

    /// <summary>Lines of every visit.</summary>
    public async Task<IReadOnlyList<VisitSummary>> EveryVisit() => Lines(await Ask<string>("everyVisit"), VisitSummaryJson.Read);

    /// <summary>A stove's line, or null.</summary>
    public async Task<StoveLine?> Stove(string key) => await Ask<string?>("stove", key) is { } json ? StoveLine.Read(json) : null;

    /// <summary>The stoves visited last.</summary>
    public async Task<IReadOnlyList<StoveLine>> LatestStoves(int limit) => Lines(await Ask<string>("latestStoves", limit), StoveLine.Read);

    /// <summary>The stoves due by a day, soonest first.</summary>
    public async Task<IReadOnlyList<StoveLine>> DueBy(DateOnly day, int limit) => Lines(await Ask<string>("dueBy", Iso(day), limit), StoveLine.Read);

    /// <summary>How many stoves there are.</summary>
    public Task<int> StoveCount() => Ask<int>("stoveCount");

    /// <summary>Keys of stoves without a forecast.</summary>
    public Task<string[]> Unforetold(int limit) => Ask<string[]>("unforetold", limit);

    /// <summary>Reads what search looks through, before somebody types.</summary>
    public Task Warm() => Do("warm");

    /// <summary>The stoves in which all words typed occur, in any of their forms, visited last first; and how many there are.</summary>
    public async Task<(int Count, IReadOnlyList<StoveLine> Stoves)> Find(string typed, int limit)
    {
        var found = JsonSerializer.Deserialize(
            await Ask<string>("find", SearchWords.Read(typed).Select(forms => forms.ToArray()).ToArray(), limit), StoreJson.Default.KeptFound)!;
        return (found.Count, Lines(found.Stoves, StoveLine.Read));
    }

    /// <summary>Keeps derived lines; a stove without a line is dropped.</summary>
    public Task KeepLines(IEnumerable<VisitSummary> visits, IEnumerable<(string Key, StoveLine? Line)> stoves) => Do("keepLines",
        visits.Select(v => new VisitRow(v.Visit, v.Stove, Iso(v.Day), v.State == VisitState.SignedOff ? null : 1, VisitSummaryJson.Write(v))).ToArray(),
        stoves.Select(s => new StoveRow(s.Key, Iso(s.Line?.Last.Day), s.Line?.Due is { } due ? Iso(due) : null, s.Line?.Text ?? "", s.Line?.Forecast is not null, s.Line?.ToJson())).ToArray());

    /// <summary>Drops every derived line.</summary>
    public Task DropLines() => Do("dropLines");

    /// <summary>The firm's book.</summary>
    public async Task<KeptBook> Book() => JsonSerializer.Deserialize(await Ask<string>("book"), StoreJson.Default.KeptBook)!;

    /// <summary>Adds entries to the firm's book, all or none.</summary>
    public Task AppendBook(VisitJournal book, IReadOnlyList<Entry> entries, bool demo) => Do("appendBook", book.Header.Line, Hashes(entries), Lines(entries), demo);

    /// <summary>Words kept as bytes, salt and all, by reference; those that are gone are left out.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Texts(IEnumerable<string> references)
    {
        var hashes = references.Select(Bare).Distinct().ToArray();
        if (hashes.Length == 0) return new Dictionary<string, string>();
        var kept = JsonSerializer.Deserialize(await Ask<string>("texts", (object)hashes), StoreJson.Default.DictionaryStringString)!;
        return kept.ToDictionary(k => Prefix + k.Key, k => k.Value);
    }

    /// <summary>Keeps words about a person and returns the reference by which an entry may name them, and what was kept.</summary>
    public async Task<(string Reference, string Kept)> KeepText(string words)
    {
        var bytes = TextBlob.Bytes(words, RandomNumberGenerator.GetBytes(16));
        return (await KeepText(bytes), Encoding.UTF8.GetString(bytes));
    }

    /// <summary>Keeps salted words as they were handed over.</summary>
    public async Task<string> KeepText(byte[] salted) => Prefix + await KeepPicture(salted, "text/plain");

    /// <summary>Puts lines from which a person's words were erased in the place of those they were.</summary>
    public Task Redact(string visit, IReadOnlyList<Entry> lines) => Do("redact", visit, Hashes(lines), Lines(lines));

    /// <inheritdoc cref="Redact"/>
    public Task RedactBook(IReadOnlyList<Entry> lines) => Do("redactBook", Hashes(lines), Lines(lines));

    /// <summary>Erases bytes for good, on a person's request.</summary>
    public Task Erase(IEnumerable<string> references) => Do("erase", (object)references.Select(Bare).ToArray());

    /// <summary>Hashes of everything kept beside the journals.</summary>
    public Task<string[]> Blobs() => Ask<string[]>("blobs");

    /// <summary>Adds a visit with the entries it has so far, whole or not at all; its id must be new here.</summary>
    public Task Begin(VisitJournal journal, bool demo) =>
        Do("begin", journal.Header.Visit, journal.Header.Line, Hashes(journal.Entries), Lines(journal.Entries), demo);

    /// <summary>Adds entries to a journal of which so many are known here: all or none.</summary>
    /// <returns>False when another tab has written meanwhile, and nothing was added.</returns>
    public Task<bool> Append(string visit, IReadOnlyList<Entry> entries, int known) => Ask<bool>("append", visit, Hashes(entries), Lines(entries), known);

    /// <summary>One visit as it lies in the store, or null.</summary>
    public async Task<KeptVisit?> Visit(string id) =>
        await Ask<string?>("visit", id) is { } kept ? JsonSerializer.Deserialize(kept, StoreJson.Default.KeptVisit) : null;

    /// <summary>Calls the book's <c>Written</c> with the id of each visit that another tab writes to.</summary>
    public Task Follow(DotNetObjectReference<Book> book) => Do("follow", book);

    /// <summary>True when this phone held visits once and its store is empty now.</summary>
    public Task<bool> WasCleared() => Ask<bool>("wasCleared");

    /// <summary>Removes the visits that came with the app.</summary>
    public Task RemoveDemo() => Do("removeDemo");

    /// <summary>Keeps a picture and returns the hash by which an entry may name it.</summary>
    public Task<string> KeepPicture(byte[] bytes, string mediaType) => Ask<string>("keepPicture", bytes, mediaType);

    /// <summary>A kept picture's bytes, or null.</summary>
    public Task<byte[]?> Picture(string hash) => Ask<byte[]?>("picture", hash);

    /// <summary>The address by which the page shows a kept picture, or null.</summary>
    public Task<string?> PictureAddress(string hash) => Ask<string?>("pictureAddress", hash);

    /// <summary>A setting of this phone, or null.</summary>
    public Task<string?> Setting(string name) => Ask<string?>("setting", name);

    /// <summary>Every setting of this phone, by name.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Settings() => JsonSerializer.Deserialize(await Ask<string>("settings"), StoreJson.Default.DictionaryStringString)!;

    /// <summary>Keeps a setting of this phone.</summary>
    public Task KeepSetting(string name, string value) => Do("keepSetting", name, value);

    /// <summary>Asks the browser to keep the store for good and says what room there is.</summary>
    public async Task<Space> Space() => JsonSerializer.Deserialize(await Ask<string>("space"), StoreJson.Default.Space)!;

    /// <summary>What a merge gained: lines that take the place of held ones without a person's words, and new entries.</summary>
    public static (IReadOnlyList<Entry> Lines, IReadOnlyList<Entry> News) Gained(VisitJournal held, VisitJournal merged)
    {
        var before = held.Entries.ToDictionary(entry => (entry.Id, entry.LineHash()), entry => entry);
        var gained = merged.Entries.Except(held.Entries).ToLookup(entry => before.ContainsKey((entry.Id, entry.LineHash())));
        return ([.. gained[true]], [.. gained[false]]);
    }

    private const string Prefix = "sha256:";

    private static string Bare(string reference) => reference.StartsWith(Prefix, StringComparison.Ordinal) ? reference[Prefix.Length..] : reference;

    private static string Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static List<T> Lines<T>(string list, Func<string, T?> read) where T : class
    {
        using var document = JsonDocument.Parse(list);
        return [.. document.RootElement.EnumerateArray().Select(line => read(line.GetRawText())).OfType<T>()];
    }

    private static string[] Hashes(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.LineHash())];

    private static string[] Lines(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.Line)];

    private async Task<T> Ask<T>(string what, params object?[] with) => await (await module.Value).InvokeAsync<T>(what, with);

    private async Task Do(string what, params object?[] with) => await (await module.Value).InvokeVoidAsync(what, with);
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(IReadOnlyList<KeptVisit>))]
[JsonSerializable(typeof(KeptStart))]
[JsonSerializable(typeof(KeptBook))]
[JsonSerializable(typeof(KeptFound))]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(Space))]
[JsonSerializable(typeof(IReadOnlyList<OwnInstrument>))]
internal sealed partial class StoreJson : JsonSerializerContext;
