using Emberwright.Field.Store;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Home;

/// <summary>Takes an archive in: pictures first, so that no entry names what is not there, then visits, then the book.</summary>
public static class ArchiveIn
{
    /// <summary>Takes it in. What is here already is kept and put together with it.</summary>
    /// <param name="archive">The archive.</param>
    /// <param name="demo">True for the demo firm's year, so that it can be removed.</param>
    /// <param name="book">The visits.</param>
    /// <param name="office">The firm's book.</param>
    /// <param name="store">The store.</param>
    /// <param name="say">Told how far it is.</param>
    public static async Task Take(Archive archive, bool demo, Book book, Office office, JournalStore store, Action<string> say)
    {
        await office.Open();
        // What was erased here on request does not come back with an older archive.
        var erased = office.Book.Journal.Erased.ToHashSet(StringComparer.Ordinal);
        foreach (var bytes in archive.Blobs.Where(blob => !erased.Contains("sha256:" + blob.Key)).Select(blob => blob.Value))
            await store.KeepPicture(bytes, TextBlob.Words(bytes) is null ? "image/jpeg" : "text/plain");
        var done = 0;
        foreach (var text in archive.Visits.Values)
        {
            await book.TakeInQuietly(text, demo);
            if (++done % 10 == 0)
            {
                say(T("ArchiveIn.of-visits", done, archive.Visits.Count));
                await Task.Delay(1);
            }
        }

        if (archive.Book is not null) await office.TakeIn(archive.Book, demo);
        say(T("ArchiveIn.sorting-in"));
        await book.Refresh();
    }
}
