using System.Globalization;

namespace Emberwright.Visits.Firm;

/// <summary>Writes customers, appliances and parts as tables that <see cref="CsvImport"/> reads back.</summary>
public static class CsvExport
{
    /// <summary>The text of a CSV file.</summary>
    /// <param name="kind">What it shall hold.</param>
    /// <param name="book">The firm's book.</param>
    /// <param name="words">Gives the words of a reference; null when they are gone.</param>
    public static string Write(TableKind kind, FirmBook book, Func<string, string?> words)
    {
        ArgumentNullException.ThrowIfNull(book);
        IEnumerable<IReadOnlyList<string?>> rows = kind switch
        {
            TableKind.Customers => book.Customers.Select(c => c.With(words)).Select(c => (IReadOnlyList<string?>)[c.Id, c.Name, c.Address, c.Phone, c.Mail, c.Access, c.FuelPerYear?.ToString()]),
            TableKind.Stoves => book.Stoves.Select(s => (IReadOnlyList<string?>)[s.Id, s.Customer, s.Pattern, s.Maker, s.Model, s.Serial, s.Label, s.Place, s.VentClass]),
            TableKind.Parts => book.Parts.Select(p => (IReadOnlyList<string?>)
                [p.Id, p.Name, p.Number, p.SupersededBy, p.Equivalents is { } e ? string.Join(" | ", e) : null, p.Price?.ToString("0.##", CultureInfo.InvariantCulture), p.Keep?.ToString(CultureInfo.InvariantCulture), p.Tag, p.Fits]),
        };
        return CsvTable.Write(CsvImport.Columns(kind), rows);
    }
}
