using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What a table holds.</summary>
public enum TableKind
{
    /// <summary>Customers.</summary>
    Customers,
    /// <summary>Appliances.</summary>
    Stoves,
    /// <summary>Parts.</summary>
    Parts,
}

/// <summary>What is wrong with a cell.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Column">Column, from 1; 0 for the whole row.</param>
/// <param name="Name">Name of the column.</param>
/// <param name="Value">What it says.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to write.</param>
public sealed record CellProblem(int Line, int Column, string Name, string Value, string Message, string Remedy)
{
    /// <summary>One sentence.</summary>
    public override string ToString() => $"Line {Line}{(Column > 0 ? $", column {Column} ({Name})" : "")}: {Message} {Remedy}{(Value.Length > 0 ? $" (It says: {Value})" : "")}";
}

/// <summary>
/// What taking a table in would do: the entries it would write, what stays as it is, what is wrong. Nothing is written
/// by making a preview, and nothing may be written while a cell is wrong.
/// </summary>
/// <param name="Kind">What the table holds.</param>
/// <param name="Entries">Bodies to write, one a row that says something new.</param>
/// <param name="New">How many records are new.</param>
/// <param name="Changed">How many records change.</param>
/// <param name="Same">How many rows say nothing new.</param>
/// <param name="Unused">Columns that mean nothing here and are passed over.</param>
/// <param name="Problems">What is wrong.</param>
public sealed record CsvPreview(
    TableKind Kind, IReadOnlyList<RecordBody> Entries, int New, int Changed, int Same, IReadOnlyList<string> Unused, IReadOnlyList<CellProblem> Problems)
{
    /// <summary>True when it may be taken in.</summary>
    public bool IsSound => Problems.Count == 0;
}

/// <summary>Reads tables of customers, appliances and parts into entries of the firm's book.</summary>
public static class CsvImport
{
    // Member, and what else a column with it may be headed. Common practice, no source.
    private static readonly Dictionary<TableKind, (string Kind, (string Member, string[] Heads)[] Columns)> Forms = new()
    {
        [TableKind.Customers] = ("customer",
        [
            ("id", ["customer id", "customer number"]), ("name", ["customer", "household"]), ("address", ["street", "full address"]), ("phone", ["telephone", "tel", "mobile"]),
            ("mail", ["email", "e-mail"]), ("access", ["how to get in"]), ("fuelPerYear", ["fuel per year", "fuel a year"]),
        ]),
        [TableKind.Stoves] = ("stove",
        [
            ("id", ["stove id", "appliance id"]), ("customer", ["customer id", "customer number"]), ("pattern", ["construction", "type"]), ("maker", ["make", "manufacturer", "brand"]),
            ("model", []), ("serial", ["serial number", "serial no"]), ("label", []), ("place", ["room", "location"]), ("ventClass", ["vent class"]),
        ]),
        [TableKind.Parts] = ("part",
        [
            ("id", []), ("name", ["part", "description"]), ("number", ["part number", "part no"]), ("supersededBy", ["superseded by", "replaced by"]), ("equivalents", ["equivalent", "same as"]),
            ("price", ["unit price"]), ("keep", ["keep on van", "minimum", "min"]), ("tag", []), ("fits", ["for"]),
        ]),
    };

    /// <summary>The members of a table, in the order they are written.</summary>
    public static IReadOnlyList<string> Columns(TableKind kind) => [.. Forms[kind].Columns.Select(c => c.Member)];

    /// <summary>What taking in a table would do.</summary>
    /// <param name="text">The CSV file's text.</param>
    /// <param name="kind">What it holds.</param>
    /// <param name="book">The book it would go into.</param>
    /// <param name="words">Gives the words of a reference in the book.</param>
    public static CsvPreview Read(string text, TableKind kind, FirmBook book, Func<string, string?>? words = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        var table = CsvTable.Read(text);
        var form = Forms[kind];
        var members = table.Columns.Select(head => MemberOf(head, form.Columns)).ToArray();
        var problems = new List<CellProblem>();
        if (members.All(m => m is null))
            problems.Add(new(1, 0, "", string.Join(", ", table.Columns), "No column of this table is known.", $"Head the columns with some of {string.Join(", ", Columns(kind))}."));
        foreach (var twice in members.Where(m => m is not null).GroupBy(m => m).Where(g => g.Count() > 1))
            problems.Add(new(1, 0, "", twice.Key!, $"Two columns are headed {twice.Key}.", "Leave one of them out."));
        var entries = new List<RecordBody>();
        var (fresh, changed, same) = (0, 0, 0);
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in problems.Count > 0 ? [] : table.Rows)
        {
            if (ReadRow(row, members, table.Columns, form.Kind, book, words, problems) is not { } body) continue;
            if (!lines.TryAdd(body.Id, row[0].Line))
            {
                problems.Add(new(row[0].Line, 0, "", body.Title, $"This row and line {lines[body.Id]} are the same record.", "Leave one of them out, or give them different ids."));
                continue;
            }

            var before = book.Find<RecordBody>(form.Kind, body.Id);
            if (before is null) fresh++;
            else if (SaysNothingNew(before is Customer c && words is not null ? c.With(words) : before, body)) { same++; continue; }
            else changed++;
            entries.Add(body);
        }

        return new(kind, entries, fresh, changed, same, [.. table.Columns.Where((_, i) => members[i] is null)], problems);
    }

    private static RecordBody? ReadRow(
        IReadOnlyList<Cell> row, string?[] members, IReadOnlyList<string> heads, string kind, FirmBook book, Func<string, string?>? words, List<CellProblem> problems)
    {
        foreach (var cell in row.Skip(members.Length).Where(c => c.Text.Length > 0))
            problems.Add(new(cell.Line, cell.Column, "", cell.Text, "There are more cells than columns.", "Put quotation marks round a text that holds a comma."));
        var said = row.Take(members.Length).Select((cell, i) => (Member: members[i], Cell: cell)).Where(c => c.Member is not null && c.Cell.Text.Length > 0).ToDictionary(c => c.Member!, c => c.Cell);
        if (said.Count == 0) return null;
        var at = problems.Count;
        var id = said.TryGetValue("id", out var stated) ? stated.Text : IdOf(kind, said, book, words);
        if (id is null) problems.Add(new(row[0].Line, 0, "", "", "This row has neither an id nor what would tell it apart.", kind == "part" ? "Give its number or its name." : kind == "stove" ? "Give maker and serial number, or an id." : "Give a name, or an id."));
        if (said.TryGetValue("pattern", out var pattern))
        {
            if (PatternLibrary.Find(pattern.Text) is { } known) said["pattern"] = pattern with { Text = known.Id };
            else problems.Add(Problem(pattern, heads, "No pattern goes by this name.", $"Use one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}, or leave it empty."));
        }

        if (said.TryGetValue("customer", out var owner) && book.Find<Customer>("customer", owner.Text) is null)
            problems.Add(Problem(owner, heads, "No customer in the book has this id.", "Take the customers in first, or leave it empty."));
        if (problems.Count > at) return null;
        var (body, found) = RecordText.Read(kind, id!, said.Where(s => s.Key != "id").ToDictionary(s => s.Key, s => s.Value.Text));
        foreach (var problem in found)
            problems.Add(said.TryGetValue(problem.Field, out var cell) ? Problem(cell, heads, problem.Message, problem.Remedy) : new(row[0].Line, 0, problem.Field, problem.Value, problem.Message, problem.Remedy));
        return body;
    }

    private static CellProblem Problem(Cell cell, IReadOnlyList<string> heads, string message, string remedy) =>
        new(cell.Line, cell.Column, heads[cell.Column - 1], cell.Text, message, remedy);

    // The same row taken in twice is the same record: its id follows from what tells it apart, or is the one already there.
    private static string? IdOf(string kind, Dictionary<string, Cell> said, FirmBook book, Func<string, string?>? words)
    {
        string? Text(string member) => said.TryGetValue(member, out var cell) ? cell.Text : null;
        switch (kind)
        {
            case "part":
                return Text("number") ?? (Text("name") is { } part ? Derived("part", part) : null);
            case "stove":
                if (Text("serial") is null) return null;
                var key = StoveKey.Of(Text("maker"), Text("serial"), null, null)!;
                return book.Stoves.FirstOrDefault(s => StoveKey.Of(s.Maker, s.Serial, null, null) == key)?.Id ?? Derived("stove", key);
            default:
                if (Text("name") is null) return null;
                var house = StoveKey.Of(null, null, Text("name"), Text("address"))!;
                return book.Customers.Select(c => words is null ? c : c.With(words)).FirstOrDefault(c => StoveKey.Of(null, null, c.Name, c.Address) == house)?.Id ?? Derived("customer", house);
        }
    }

    private static string Derived(string kind, string what) =>
        $"{kind[0]}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{kind}\n{what}")))[..12]}";

    private static string? MemberOf(string head, (string Member, string[] Heads)[] columns)
    {
        var plain = Plain(head);
        return columns.FirstOrDefault(c => Plain(c.Member) == plain).Member ?? columns.FirstOrDefault(c => c.Heads.Any(h => Plain(h) == plain)).Member;
    }

    private static bool SaysNothingNew(RecordBody before, RecordBody row)
    {
        var now = Members(before);
        return Members(row).All(m => now.TryGetValue(m.Key, out var value) && value == m.Value);
    }

    private static Dictionary<string, string> Members(RecordBody body)
    {
        using var document = JsonDocument.Parse(BodyWriter.Object(body.Write));
        return document.RootElement.EnumerateObject().ToDictionary(m => m.Name, m => m.Value.GetRawText());
    }

    private static string Plain(string text) => string.Concat(text.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
