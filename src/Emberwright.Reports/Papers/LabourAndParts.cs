using System.Globalization;
using System.Text;
using Emberwright.Reports.FromVisit;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Reports.Papers;

/// <summary>
/// Labour and parts of a visit as comma-separated values (RFC 4180), for whoever writes the bill elsewhere: one row for the time
/// on site, one for each piece of work, part and consent. Numbers with a point, times with their offset.
/// </summary>
public static class LabourAndParts
{
    private static readonly string[] Columns = ["visit", "kind", "at", "what", "number", "use", "area", "minutes", "amount", "by", "condition", "from"];

    /// <summary>The whole file, CRLF line ends, header first.</summary>
    public static string Csv(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var text = new StringBuilder();
        Row(text, Columns);
        foreach (var row in Rows(visit)) Row(text, row.Concat(Enumerable.Repeat("", Columns.Length - row.Length)));
        return text.ToString();
    }

    private static IEnumerable<string[]> Rows(Visit visit)
    {
        if (OnSite(visit) is { } time)
            yield return [visit.Id, "labour", At(time.From), "time on site", "", "", "", Math.Round((time.To - time.From).TotalMinutes).ToString("0", CultureInfo.InvariantCulture), "", visit.Call?.Technician ?? ""];
        foreach (var l in visit.Labour)
            yield return [visit.Id, "labour", At(l.At), CatalogueWords.ActionName(l.Body.Work), "", "", l.Body.Area is { } area ? AreaName.Of(area) : "", l.Body.Minutes.ToString("0.#", CultureInfo.InvariantCulture), "", l.Entry.Author];
        foreach (var a in visit.Of<ActionBody>())
            yield return [visit.Id, a.Body.Done ? "work" : "work not done", At(a.At), CatalogueWords.ActionName(a.Body.Action), "", a.Body.Done ? a.Body.Outcome ?? "" : a.Body.Reason is { } why ? NotDoneWords.Of(why) : "", a.Body.Area is { } area ? AreaName.Of(area) : "", "", "", a.Entry.Author];
        foreach (var p in visit.Of<PartBody>())
            yield return [visit.Id, "part", At(p.At), p.Body.Part, p.Body.Number ?? "", p.Body.Use ?? "fitted", p.Body.Area is { } area ? AreaName.Of(area) : "", "", "", p.Body.Tag ?? "", p.Body.Condition is { } condition ? EnumWords.Of(condition) : "", p.Body.From is { } from ? EnumWords.Of(from) : ""];
        foreach (var c in visit.Of<ConsentBody>())
            yield return [visit.Id, "consent", At(c.At), c.Body.About, "", c.Body.Given ? "agreed" : "refused", c.Body.Area is { } area ? AreaName.Of(area) : "", "", c.Body.Amount ?? "", CustomerPage.Known(c.Body.By)];
    }

    // From the first thing that needs somebody there to the signature or the last entry of that day.
    private static (DateTimeOffset From, DateTimeOffset To)? OnSite(Visit visit)
    {
        var there = visit.Facts.Where(f => f.Body is SafeBody or ReadingBody or ObservationBody or ActionBody or ProofBody or PhotoBody).Select(f => f.At).ToArray();
        if (there.Length == 0) return null;
        var from = there.Min();
        var to = visit.Facts.Where(f => f.At >= from && f.At - from < TimeSpan.FromHours(16)).Max(f => f.At);
        return (from, to);
    }

    private static string At(DateTimeOffset at) => at.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture);

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    // A spreadsheet must not take somebody's words for a formula.
    private static string Cell(string words)
    {
        var safe = words.Length > 0 && words[0] is '=' or '+' or '-' or '@' ? "'" + words : words;
        return safe.IndexOfAny([',', '"', '\r', '\n']) < 0 ? safe : $"\"{safe.Replace("\"", "\"\"")}\"";
    }
}
