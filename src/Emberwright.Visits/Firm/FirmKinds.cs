using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>The kinds of entry of the firm's book, each with the reader of its body.</summary>
public static class FirmKinds
{
    private static readonly Dictionary<string, Func<BodyReader, EntryBody>> Readers = new(StringComparer.Ordinal)
    {
        ["firm"] = FirmDetails.Read,
        ["person"] = Person.Read,
        ["instrument"] = Instrument.Read,
        ["part"] = Part.Read,
        ["counted"] = Counted.Read,
        ["customer"] = Customer.Read,
        ["stove"] = StoveRecord.Read,
        ["card"] = CardRecord.Read,
        ["rate"] = OwnRate.Read,
        ["joined"] = Joined.Read,
        ["archived"] = Archived.Read,
        ["erased"] = Erased.Read,
        ["contact"] = Contact.Read,
        ["correction"] = r => CorrectionBody.Read(r, Read),
    };

    /// <summary>Names of the known kinds.</summary>
    public static IReadOnlyCollection<string> Names => Readers.Keys;

    internal static EntryBody Read(string kind, BodyReader body, string json) =>
        Readers.TryGetValue(kind, out var read) ? read(body) : new UnknownBody(kind, json);
}
