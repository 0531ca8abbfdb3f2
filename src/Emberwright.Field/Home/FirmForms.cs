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
        ["people"] = new("person", "People", "Who works for the firm, and what each is qualified for until when.", "Nobody yet. Add who signs visits.", "Add a person", "Name",
            [new("name", "Name, as it stands under entries"), new("phone", "Telephone", "tel"), new("qualifications", "Qualifications: what; number; until", Lines: true, Hint: "solid-fuel inspection; 17-204; 2027-06-30")],
            book => book.People),
        ["instruments"] = new("instrument", "Instruments", "Each reading is put down to the instrument of its kind. One taken after its calibration ran out is flagged, and as left it cannot be signed off.", "No instrument yet.", "Add an instrument", "Name",
            [new("name", "The name readings use"), new("tool", "What it reads", Choices: [.. Enum.GetValues<Tool>().Select(tool => (EnumWords.Of(tool), ToolWords.Of(tool)))]), new("serial", "Serial number"), new("measures", "Range and what else to know"), new("calibratedOn", "Calibrated on", "date"), new("calibratedUntil", "Good until", "date")],
            book => book.Instruments),
        ["parts"] = new("part", "Parts", "What lies on the van is what was counted, less what visits fitted since.", "No part yet. Add one, or take a table in under Exchange.", "Add a part", "Name or number",
            [
                new("name", "What it is"), new("number", "Number"), new("supersededBy", "Superseded by"), new("equivalents", "Does the same: numbers between |"), new("price", "Price", Mode: "decimal"),
                new("keep", "How many should lie on the van", Mode: "numeric"), new("tag", "Return or warranty tag"), new("fits", "Fits"),
            ], book => book.Parts),
        ["customers"] = new("customer", "Customers", "Names and addresses lie beside the book, so that they can be erased.", "No customer yet. Those of your visits stand under Stoves; add one here to note access and fuel.", "Add a customer", "Name or street",
            [new("name", "Name"), new("address", "Address"), new("phone", "Telephone", "tel"), new("mail", "Mail", "email"), new("access", "How one gets in: keys, dogs, parking"), new("fuelPerYear", "Fuel of a year, with its unit", Hint: "1.2 t")],
            book => book.Customers),
        ["stoves"] = new("stove", "Stoves with a record", "What the firm keeps beside the visits: place, clearances, papers.", "No stove has a record yet. Open one under Stoves to add what you measured.", "Add a stove", "Maker, model, serial",
            [new("maker", "Maker"), new("model", "Model"), new("serial", "Serial number"), new("pattern", "Construction, by its id", Hint: "damper-insert"), new("customer", "Id of the customer"), new("place", "Where it stands")],
            book => book.Stoves),
    };

    /// <summary>The list of an address; null when there is none.</summary>
    public static FirmForm? Of(string place) => All.GetValueOrDefault(place);

    /// <summary>What a record shows on a list: a title, then further lines.</summary>
    /// <param name="record">The record.</param>
    /// <param name="words">Gives the words of a reference.</param>
    public static string TitleOf(RecordBody record, Func<string, string?> words) => string.Join('\n', (record switch
    {
        Customer c when c.With(words) is var said => new[] { said.Name ?? "Erased, or no name", said.Address, said.Phone, said.Access, said.FuelPerYear is { } fuel ? $"{fuel} a year" : null },
        Person p => [p.Title, p.Phone, string.Join(", ", (p.Qualifications ?? []).Select(q => q.What))],
        Instrument i => [i.Title, i.Tool is { } tool ? ToolWords.Of(tool) : null, i.Measures, i.Serial is { Length: > 0 } serial ? $"serial {serial}" : null],
        Part p => [p.Title, p.Fits, p.SupersededBy is { Length: > 0 } by ? $"superseded by {by}" : null, p.Tag is { Length: > 0 } tag ? $"tag {tag}" : null],
        StoveRecord s => [s.Title, s.Serial is { Length: > 0 } serial ? $"serial {serial}" : null, s.Place],
        _ => [record.Title],
    }).Where(w => !string.IsNullOrEmpty(w)));
}
