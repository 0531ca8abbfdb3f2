namespace Emberwright.Visits.Journal;

/// <summary>Writes new entries into a journal for one device and author. Clock and ids are handed in.</summary>
/// <param name="device">Name of this device; a restored device takes a new one.</param>
/// <param name="author">Who writes.</param>
/// <param name="time">The clock, with the local zone for the offset written.</param>
/// <param name="newId">Makes a UUID of version 7 for a time.</param>
public sealed class EntryFactory(string device, string author, TimeProvider time, Func<DateTimeOffset, Guid> newId)
{
    /// <summary>The journal with one more entry of this body, written now and after all that the journal holds.</summary>
    public VisitJournal Append(VisitJournal journal, EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return journal.Append(Make(journal, body));
    }

    /// <summary>The entry that <see cref="Append"/> would add.</summary>
    public Entry Make(VisitJournal journal, EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(body);
        var now = time.GetLocalNow();
        var at = new DateTimeOffset(now.Ticks - now.Ticks % TimeSpan.TicksPerMillisecond, now.Offset);
        var id = newId(at).ToString();
        var seq = journal.Entries.Where(e => e.Device == device).Select(e => e.Seq).DefaultIfEmpty(0).Max() + 1;
        var clock = journal.Entries.Select(e => e.Clock).DefaultIfEmpty().Max().Next(at);
        var line = BodyWriter.Object(w =>
        {
            w.Text("id", id);
            w.Text("device", device);
            w.Number("seq", seq);
            w.Text("author", author);
            w.Time("at", at);
            w.Text("clock", clock.ToString());
            w.Text("kind", body.Kind);
            w.Member("body", body.Write);
        });
        return new Entry { Id = id, Device = device, Seq = seq, Author = author, At = at, Clock = clock, Body = body, Line = line };
    }
}
