using System.Text;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Store;

/// <summary>
/// Words about people, kept on this phone beside the journals that name them by reference, so that a person can be
/// erased: the bytes go, every entry and every seal stays.
/// </summary>
public sealed class Names(JournalStore store)
{
    private readonly Dictionary<string, string> salted = new(StringComparer.Ordinal);

    /// <summary>The words of a reference; null when they are not here or were erased.</summary>
    public string? Words(string reference) => salted.TryGetValue(reference, out var kept) ? TextBlob.Words(Encoding.UTF8.GetBytes(kept)) : null;

    /// <summary>Reads the words that journals name, as far as they are not in memory yet.</summary>
    public Task Learn(params IEnumerable<VisitJournal> journals) => Learn(journals.SelectMany(References));

    /// <summary>Reads the words of references, as far as they are not in memory yet.</summary>
    public async Task Learn(IEnumerable<string> references)
    {
        string[] wanted = [.. references.Where(reference => !salted.ContainsKey(reference)).Distinct()];
        foreach (var (reference, kept) in await store.Texts(wanted)) salted[reference] = kept;
    }

    /// <summary>A journal with the words it names, as far as they are in memory.</summary>
    public VisitJournal With(VisitJournal journal)
    {
        var known = References(journal).Distinct().Where(salted.ContainsKey).ToDictionary(reference => reference, reference => salted[reference]);
        return known.Count == 0 ? journal : journal.With(known);
    }

    /// <summary>Keeps the words of a body on the disk and gives the body that names them by reference.</summary>
    public async Task<EntryBody> Hide(EntryBody body)
    {
        var references = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var words in PersonalWords.In(body))
        {
            var (reference, kept) = await store.KeepText(words);
            salted[reference] = kept;
            references[words] = reference;
        }

        return references.Count == 0 ? body : PersonalWords.Replace(body, words => references.GetValueOrDefault(words, words));
    }

    /// <summary>Keeps the words that came with a journal, and erases what its entries say was erased.</summary>
    public async Task Take(VisitJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        foreach (var (reference, kept) in journal.Words.Where(word => !salted.ContainsKey(word.Key)))
        {
            await store.KeepText(Encoding.UTF8.GetBytes(kept));
            salted[reference] = kept;
        }

        await Forget([.. journal.Erased]);
    }

    /// <summary>Erases words and signatures for good.</summary>
    public async Task Forget(IReadOnlyCollection<string> references)
    {
        if (references.Count == 0) return;
        await store.Erase(references);
        foreach (var reference in references) salted.Remove(reference);
    }

    private static IEnumerable<string> References(VisitJournal journal) => journal.Entries.SelectMany(entry => PersonalWords.References(entry.Body));
}
