using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Home;

/// <summary>One list of the firm's book as a screen shows it.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="Title">Heading.</param>
/// <param name="About">What it is for.</param>
/// <param name="Empty">What to say when there is none.</param>
/// <param name="Add">Words that open the form for a new one.</param>
/// <param name="Find">What to search by.</param>
/// <param name="Fields">Members to show.</param>
/// <param name="Records">The records on the list.</param>
public sealed record FirmForm(
    string Kind, string Title, string About, string Empty, string Add, string Find, IReadOnlyList<RecordField> Fields, Func<FirmBook, IEnumerable<RecordBody>> Records);

/// <summary>The lists of the firm's book.</summary>
public static class FirmForms
{
    private static readonly Dictionary<string, FirmForm> All = new()
    {
        ["people"] = new("person", T("common.people"), T("FirmForms.who-works-for-the-firm-and"), T("FirmForms.nobody-yet-add-who-signs-visits"), T("FirmForms.add-a-person"), T("common.name"),
            [new("name", T("FirmForms.name-as-it-stands-under-entries")), new("phone", T("common.telephone"), "tel"), new("qualifications", T("FirmForms.qualifications-what-number-until"), Lines: true, Hint: T("FirmForms.solid-fuel-inspection-17-204-2027"))],
            book => book.People),
        ["instruments"] = new("instrument", "Instruments", T("FirmForms.each-reading-is-put-down-to"), T("FirmForms.no-instrument-yet"), T("common.add-an-instrument"), T("common.name"),
            [new("name", T("FirmForms.the-name-readings-use")), new("tool", T("FirmForms.what-it-reads"), Choices: [.. Enum.GetValues<Tool>().Select(tool => (EnumWords.Of(tool), ToolWords.Of(tool)))]), new("serial", T("common.serial-number")), new("measures", T("FirmForms.range-and-what-else-to-know")), new("calibratedOn", T("FirmForms.calibrated-on"), "date"), new("calibratedUntil", T("FirmForms.good-until"), "date")],
            book => book.Instruments),
        ["parts"] = new("part", T("FirmForms.parts"), T("FirmForms.what-lies-on-the-van-is"), T("FirmForms.no-part-yet-add-one-or"), T("FirmForms.add-a-part"), T("FirmForms.name-or-number"),
            [
                new("name", T("FirmForms.what-it-is")), new("number", T("FirmForms.number")), new("supersededBy", T("FirmForms.superseded-by")), new("equivalents", T("FirmForms.does-the-same-numbers-between")), new("price", T("FirmForms.price"), Mode: "decimal", IsNumber: true),
                new("keep", T("FirmForms.how-many-should-lie-on-the"), Mode: "numeric"), new("tag", T("FirmForms.return-or-warranty-tag")), new("fits", T("FirmForms.fits")),
            ], book => book.Parts),
        ["customers"] = new("customer", T("common.customers"), T("FirmForms.names-and-addresses-lie-beside-the"), T("FirmForms.no-customer-yet-those-of-your"), T("FirmForms.add-a-customer"), T("FirmForms.name-or-street"),
            [new("name", T("common.name")), new("address", T("common.address")), new("phone", T("common.telephone"), "tel"), new("mail", T("FirmForms.mail"), "email"), new("access", T("FirmForms.how-one-gets-in-keys-dogs")), new("fuelPerYear", T("FirmForms.fuel-of-a-year-with-its"), Hint: "1.2 t", IsNumber: true)],
            book => book.Customers),
        ["stoves"] = new("stove", T("FirmForms.stoves-with-a-record"), T("FirmForms.what-the-firm-keeps-beside-the"), T("FirmForms.no-stove-has-a-record-yet"), T("FirmForms.add-a-stove"), T("FirmForms.maker-model-serial"),
            [new("maker", T("common.maker")), new("model", T("common.model")), new("serial", T("common.serial-number")), new("pattern", T("FirmForms.construction-by-its-id"), Hint: "damper-insert"), new("customer", T("FirmForms.id-of-the-customer")), new("place", T("FirmForms.where-it-stands"))],
            book => book.Stoves),
    };

    /// <summary>The list of an address; null when there is none.</summary>
    public static FirmForm? Of(string place) => All.GetValueOrDefault(place);

    /// <summary>What a record shows on a list: a title, then further lines.</summary>
    /// <param name="record">The record.</param>
    /// <param name="words">Gives the words of a reference.</param>
    public static string TitleOf(RecordBody record, Func<string, string?> words) => string.Join('\n', (record switch
    {
        Customer c when c.With(words) is var said => new[] { said.Name ?? T("FirmForms.erased-or-no-name"), said.Address, said.Phone, said.Access, said.FuelPerYear is { } fuel ? T("FirmForms.a-year", fuel) : null },
        Person p => [p.Title, p.Phone, string.Join(", ", (p.Qualifications ?? []).Select(q => q.What))],
        Instrument i => [i.Title, i.Tool is { } tool ? ToolWords.Of(tool) : null, i.Measures, i.Serial is { Length: > 0 } serial ? T("FirmForms.serial", serial) : null],
        Part p => [p.Title, p.Fits, p.SupersededBy is { Length: > 0 } by ? T("FirmForms.superseded-by-2", by) : null, p.Tag is { Length: > 0 } tag ? T("FirmForms.tag", tag) : null],
        StoveRecord s => [s.Title, s.Serial is { Length: > 0 } serial ? T("FirmForms.serial", serial) : null, s.Place],
        _ => [record.Title],
    }).Where(w => !string.IsNullOrEmpty(w)));
}
