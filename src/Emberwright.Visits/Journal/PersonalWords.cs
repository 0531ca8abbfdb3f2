namespace Emberwright.Visits.Journal;

/// <summary>
/// Words about a person in entries: names, addresses, telephones. An entry may hold a <see cref="Blob"/> reference in
/// their place and the journal keep the words beside its entries (<see cref="VisitJournal.Words"/>), so that they can be
/// erased while every entry and its hash stays.
/// </summary>
public static class PersonalWords
{
    /// <summary>What stands where a person's words stood.</summary>
    public const string Erased = "erased on request";

    /// <summary>The words about a person that an entry states as they are, not by reference.</summary>
    public static IReadOnlyList<string> In(EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        var found = new List<string>();
        body.WithPersonal(words =>
        {
            if (words.Length > 0 && words != Erased && !Blob.IsReference(words)) found.Add(words);
            return words;
        });
        return [.. found.Distinct()];
    }

    /// <summary>References to words about a person in a body.</summary>
    public static IReadOnlyList<string> References(EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        var found = new List<string>();
        body.WithPersonal(words =>
        {
            if (Blob.IsReference(words)) found.Add(words);
            return words;
        });
        return [.. found.Distinct()];
    }

    /// <summary>The same body with each of a person's words replaced.</summary>
    /// <param name="body">The body.</param>
    /// <param name="each">Gives what stands in the place of words or of a reference.</param>
    public static EntryBody Replace(EntryBody body, Func<string, string> each)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(each);
        return body.WithPersonal(each);
    }

    /// <summary>Words that are known: null for none and for those that were erased.</summary>
    public static string? Known(string? words) => string.IsNullOrEmpty(words) || words == Erased || Blob.IsReference(words) ? null : words;
}
