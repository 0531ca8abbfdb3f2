using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Emberwright.Visits.Firm;

/// <summary>One cell of a table with where it stands.</summary>
/// <param name="Text">What it says, without spaces around it.</param>
/// <param name="Line">Line of the file where its row begins, from 1.</param>
/// <param name="Column">Column of the table, from 1.</param>
public readonly record struct Cell(string Text, int Line, int Column);

/// <summary>A CSV file (RFC 4180) as rows of cells: its first row names the columns. Commas, semicolons or tabs between cells.</summary>
/// <param name="Columns">The names in the first row.</param>
/// <param name="Rows">The other rows; cells that a short row lacks are empty.</param>
public sealed record CsvTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<Cell>> Rows)
{
    private static readonly string[] Separators = [",", ";", "\t"];

    /// <summary>Reads the text of a file.</summary>
    public static CsvTable Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.TrimStart('\uFEFF');
        using var parser = new CsvParser(new StringReader(text), Settings(SeparatorOf(text)));
        if (!parser.Read()) return new([], []);
        string[] columns = [.. parser.Record!.Select(c => c.Trim())];
        var rows = new List<IReadOnlyList<Cell>>();
        for (var line = parser.RawRow + 1; parser.Read(); line = parser.RawRow + 1)
        {
            var record = parser.Record!;
            if (record.All(string.IsNullOrWhiteSpace)) continue;
            rows.Add([.. columns.Select((_, i) => new Cell(i < record.Length ? record[i].Trim() : "", line, i + 1)), .. record.Skip(columns.Length).Select((c, i) => new Cell(c.Trim(), line, columns.Length + i + 1))]);
        }

        return new(columns, rows);
    }

    /// <summary>The text of a table, with CR LF as RFC 4180 asks.</summary>
    /// <param name="columns">Names of the columns.</param>
    /// <param name="rows">The cells of each row; null is empty.</param>
    public static string Write(IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string?>> rows)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(rows);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        // The line end is the library's own, CR LF: stating it would leave a text that holds a lone LF without quotation marks.
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture), leaveOpen: true))
        {
            foreach (var row in rows.Prepend(columns))
            {
                foreach (var cell in row) csv.WriteField(cell ?? "");
                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    private static CsvConfiguration Settings(string separator) => new(CultureInfo.InvariantCulture)
    {
        Delimiter = separator,
        BadDataFound = null,
        IgnoreBlankLines = true,
        DetectColumnCountChanges = false,
    };

    // Whichever stands most often in the first line; spreadsheets write semicolons where the comma is a decimal mark.
    private static string SeparatorOf(string text)
    {
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        var first = end < 0 ? text : text[..end];
        return Separators.MaxBy(mark => first.Count(letter => letter == mark[0]))!;
    }
}
