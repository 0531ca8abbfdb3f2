using System.Text.Json;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// One stove in a line: its last visit, how many there were, what is forecast. What lists show and search looks through.
/// Derived; made anew whenever a visit to the stove or its record changes.
/// </summary>
/// <param name="Stove">The stove's key.</param>
/// <param name="Last">Its last visit.</param>
/// <param name="Visits">How many visits are known.</param>
/// <param name="Forecast">What was forecast; null when it was not yet.</param>
/// <param name="Text">Words to search by, lower case.</param>
public sealed record StoveLine(string Stove, VisitSummary Last, int Visits, ForecastLine? Forecast, string Text)
{
    /// <summary>The day one should look at it: agreed or forecast, whichever is sooner; null when neither is known.</summary>
    public DateOnly? Due => Last is { Kind: VisitKind.Decommissioning } || Last is { State: not VisitState.SignedOff, Due: null } ? null
        : Last.Due?.On is { } agreed ? Forecast is { } f && f.Due < agreed ? f.Due : agreed
        : Forecast?.Due;

    /// <summary>The line of a stove; null when it has no visit.</summary>
    /// <param name="stove">Its key.</param>
    /// <param name="visits">Its visits.</param>
    /// <param name="forecast">What was forecast.</param>
    /// <param name="more">Further words to search by, from the firm's book.</param>
    public static StoveLine? Of(string stove, IEnumerable<VisitSummary> visits, ForecastLine? forecast, string more = "")
    {
        ArgumentNullException.ThrowIfNull(visits);
        ArgumentNullException.ThrowIfNull(more);
        var dated = visits.OrderBy(v => v.Day).ThenBy(v => v.Booked).ToArray();
        return dated is [.., var last]
            ? new(stove, last, dated.Length, forecast, string.Join('\n', dated.SelectMany(v => v.Text().Split('\n')).Append(more.ToLowerInvariant()).Distinct()))
            : null;
    }

    /// <summary>The line as JSON, without its words.</summary>
    public string ToJson() => BodyWriter.Object(w =>
    {
        w.Text("stove", Stove);
        w.Number("visits", Visits);
        w.Raw("last", VisitSummaryJson.Write(Last with { Work = [], Seen = null, Causes = [] }));
        if (Forecast is { } f)
            w.Member("forecast", o =>
            {
                o.Date("due", f.Due);
                o.Date("early", f.Early);
                o.Date("likely", f.Likely);
                o.Date("late", f.Late);
                o.Text("area", f.Area);
                o.Text("restsOn", f.RestsOn);
            });
    });

    /// <summary>Reads a line; null when it is none.</summary>
    public static StoveLine? Read(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var r = new BodyReader(document.RootElement, 0, "", []);
            if (r.RawObject("last") is not { } raw || VisitSummaryJson.Read(raw) is not { } last) return null;
            var forecast = r.Object("forecast") is { } f && f.Date("due") is { } due
                ? new ForecastLine(due, f.Date("early"), f.Date("likely"), f.Date("late"), f.Text("area") ?? "", f.Text("restsOn") ?? "")
                : null;
            return new(r.Text("stove") ?? "", last, r.Count("visits") ?? 1, forecast, last.Text());
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
