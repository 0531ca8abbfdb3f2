using System.Text.Json;
using System.Text.Json.Serialization;
using Emberwright.Visits.Journal;
using Microsoft.JSInterop;

namespace Emberwright.Field.Store;

/// <summary>A visit as it lies in the phone's store: the text of its file, line by line.</summary>
/// <param name="Visit">Visit id.</param>
/// <param name="Header">First line of the visit file.</param>
/// <param name="Demo">True for the visits that come with the app.</param>
/// <param name="Lines">Entries in the order they were written here, each as first written.</param>
public sealed record KeptVisit(string Visit, string Header, bool Demo, IReadOnlyList<string> Lines);

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

    /// <summary>Every visit on this phone.</summary>
    public async Task<IReadOnlyList<KeptVisit>> Visits() =>
        JsonSerializer.Deserialize(await Ask<string>("visits"), StoreJson.Default.IReadOnlyListKeptVisit) ?? [];

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

    /// <summary>Keeps a setting of this phone.</summary>
    public Task KeepSetting(string name, string value) => Do("keepSetting", name, value);

    /// <summary>Asks the browser to keep the store for good and says what room there is.</summary>
    public async Task<Space> Space() => JsonSerializer.Deserialize(await Ask<string>("space"), StoreJson.Default.Space)!;

    private static string[] Hashes(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.LineHash())];

    private static string[] Lines(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.Line)];

    private async Task<T> Ask<T>(string what, params object?[] with) => await (await module.Value).InvokeAsync<T>(what, with);

    private async Task Do(string what, params object?[] with) => await (await module.Value).InvokeVoidAsync(what, with);
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(IReadOnlyList<KeptVisit>))]
[JsonSerializable(typeof(Space))]
[JsonSerializable(typeof(IReadOnlyList<OwnInstrument>))]
internal sealed partial class StoreJson : JsonSerializerContext;
