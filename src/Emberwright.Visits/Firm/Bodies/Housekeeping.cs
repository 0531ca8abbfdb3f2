using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// Says that two records of a kind, or a stove of the visits and a record, are one. What is known of the first goes to
/// the second. Withdrawing the entry parts them again.
/// </summary>
/// <param name="Of">Kind: <c>stove</c>, <c>customer</c>, <c>part</c>, ….</param>
/// <param name="From">Id of the duplicate, or a <see cref="StoveKey"/>.</param>
/// <param name="Into">Id of the record that stays, or a <see cref="StoveKey"/>.</param>
public sealed record Joined(string Of, string From, string Into) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "joined";

    internal static Joined Read(BodyReader r)
    {
        var joined = new Joined(r.Required("of", "Name the kind, such as stove."), r.Required("from", "Name the duplicate by its id."), r.Required("into", "Name the record that stays."));
        if (joined.From.Length > 0 && joined.From == joined.Into) r.Refuse("into", joined.Into, "A record cannot be joined to itself.", "Name another record.");
        return joined;
    }

    internal override void Write(BodyWriter writer)
    {
        writer.Text("of", Of);
        writer.Text("from", From);
        writer.Text("into", Into);
    }
}

/// <summary>Takes a record off the lists, or puts it back. Nothing of it is lost.</summary>
/// <param name="Of">Kind.</param>
/// <param name="Record">Id of the record.</param>
/// <param name="Away">True to put it away, false to bring it back.</param>
public sealed record Archived(string Of, string Record, bool Away = true) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "archived";

    internal static Archived Read(BodyReader r) =>
        new(r.Required("of", "Name the kind, such as customer."), r.Required("record", "Name the record by its id."), r.Flag("away") ?? true);

    internal override void Write(BodyWriter writer)
    {
        writer.Text("of", Of);
        writer.Text("record", Record);
        writer.Flag("away", Away ? null : false);
    }
}

/// <summary>
/// Says that a person's words were erased on request, and which. Only the bytes beside the journal go; every entry
/// stays, with its hash, so that seals stay whole.
/// </summary>
/// <param name="Customer">Id of the customer, or the <see cref="StoveKey"/> of a household known from visits.</param>
/// <param name="Blobs">References to what was erased.</param>
/// <param name="Asked">Who asked and how, in words.</param>
public sealed record Erased(string Customer, IReadOnlyList<string> Blobs, string? Asked = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "erased";

    /// <inheritdoc/>
    public bool Equals(Erased? other) => other is not null && (Customer, Asked) == (other.Customer, other.Asked) && Blobs.SequenceEqual(other.Blobs);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Customer, Blobs.Count);

    internal static Erased Read(BodyReader r)
    {
        var blobs = r.Texts("blobs");
        foreach (var blob in blobs.Where(b => !Blob.IsReference(b)))
            r.Report<string>("blobs", blob, "This does not name bytes.", "Write sha256: and 64 lower-case hexadecimal digits.");
        return new(r.Required("customer", "Name the customer by its id."), [.. blobs.Where(Blob.IsReference)], r.Text("asked"));
    }

    internal override void Write(BodyWriter writer)
    {
        writer.Text("customer", Customer);
        writer.Texts("blobs", Blobs);
        writer.Text("asked", Asked);
    }
}

/// <summary>What the firm wrote or called a household about.</summary>
public enum ContactAbout
{
    /// <summary>The next service.</summary>
    Due,
    /// <summary>A service in spring, before the rush.</summary>
    SpringOffer,
    /// <summary>How it runs, a week after a visit.</summary>
    HowItRuns,
}

/// <summary>A letter, message or call to a household about a stove. Until a visit is booked it is asked again after a week.</summary>
/// <param name="Stove">The stove's key or record.</param>
/// <param name="About">What about.</param>
/// <param name="On">The day.</param>
/// <param name="Answer">What they said; null while there is none.</param>
public sealed record Contact(string Stove, ContactAbout About, DateOnly On, string? Answer = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "contact";

    internal static Contact Read(BodyReader r)
    {
        var on = r.Date("on");
        if (on is null) r.Refuse("on", r.Text("on") ?? "", "The date is missing.", "Write year-month-day, such as 2027-03-14.");
        return new(r.Required("stove", "Name the stove."), r.RequiredChoice<ContactAbout>("about"), on ?? default, r.Text("answer"));
    }

    internal override void Write(BodyWriter writer)
    {
        writer.Text("stove", Stove);
        writer.Choice<ContactAbout>("about", About);
        writer.Date("on", On);
        writer.Text("answer", Answer);
    }
}
