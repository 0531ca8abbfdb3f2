using System.Text.Json;
using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>A visit's summary as one line of JSON, for the store's index. It is no archive: an index can always be made anew.</summary>
public static class VisitSummaryJson
{
    /// <summary>The line.</summary>
    public static string Write(VisitSummary s)
    {
        ArgumentNullException.ThrowIfNull(s);
        return BodyWriter.Object(w =>
        {
            w.Text("visit", s.Visit);
            w.Text("stove", s.Stove);
            w.Choice<VisitState>("state", s.State);
            w.Date("day", s.Day);
            w.Time("booked", s.Booked);
            w.Choice("kind", s.Kind);
            w.Text("job", s.Job);
            w.Text("customer", s.Customer);
            w.Text("address", s.Address);
            w.Text("phone", s.Phone);
            w.Text("pattern", s.Pattern);
            w.Text("maker", s.Maker);
            w.Text("model", s.Model);
            w.Text("serial", s.Serial);
            w.Text("label", s.Label);
            w.Text("complaint", s.Complaint);
            w.Flag("stopUse", s.StopUse ? true : null);
            if (s.Due is { } due) w.Member("due", due.Write);
            w.Objects("parts", s.Parts, (p, o) => { o.Text("part", p.Part); o.Text("number", p.Number); o.Text("use", p.Use); o.Text("tag", p.Tag); o.Time("at", p.At); });
            w.Texts("codes", s.Codes);
            w.Objects("work", s.Work, (a, o) => { o.Text("action", a.Action); o.Number("minutes", Math.Round(a.Minutes, 2)); });
            w.Objects("causes", s.Causes, (c, o) => { o.Text("fault", c.Fault); o.Number("found", Math.Round(c.AsFound, 4)); o.Number("now", Math.Round(c.Now, 4)); });
            if (s.Seen is { } seen) w.Member("seen", o => Write(seen, o));
            w.Number("exhaust", s.ExhaustC);
            w.Number("oxygen", s.OxygenPercent);
            w.Number("co", s.CarbonMonoxidePpm);
            w.Number("minutes", s.MinutesOnSite is { } m ? Math.Round(m, 2) : null);
        });
    }

    /// <summary>Reads a line; null when it is no summary.</summary>
    public static VisitSummary? Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            using var document = JsonDocument.Parse(json);
            return document.RootElement.ValueKind == JsonValueKind.Object ? Read(new BodyReader(document.RootElement, 0, "", [])) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static VisitSummary Read(BodyReader r) => new()
    {
        Visit = r.Text("visit") ?? "",
        Stove = r.Text("stove") ?? "",
        State = r.Choice<VisitState>("state") ?? VisitState.Called,
        Day = r.Date("day"),
        Booked = r.Time("booked"),
        Kind = r.Choice<VisitKind>("kind"),
        Job = r.Text("job"),
        Customer = r.Text("customer"),
        Address = r.Text("address"),
        Phone = r.Text("phone"),
        Pattern = r.Text("pattern"),
        Maker = r.Text("maker"),
        Model = r.Text("model"),
        Serial = r.Text("serial"),
        Label = r.Text("label"),
        Complaint = r.Text("complaint"),
        StopUse = r.Flag("stopUse") ?? false,
        Due = r.Object("due") is { } due ? DueBody.Read(due) : null,
        Parts = r.Objects("parts", p => new PartUsed(p.Text("part") ?? "", p.Text("number"), p.Text("use"), p.Text("tag"), p.Time("at") ?? default)),
        Codes = r.Texts("codes"),
        Work = [.. r.Objects("work", a => Tuple.Create(a.Text("action") ?? "", a.Number("minutes", 0, 1e6) ?? 0)).Select(t => (t.Item1, t.Item2))],
        Causes = r.Objects("causes", c => new Concluded(c.Text("fault") ?? "", c.Number("found", 0, 1) ?? 0, c.Number("now", 0, 1) ?? 0)),
        Seen = r.Object("seen") is { } seen ? ReadSeen(seen) : null,
        ExhaustC = r.Number("exhaust", -100, 2000),
        OxygenPercent = r.Number("oxygen", 0, 100),
        CarbonMonoxidePpm = r.Number("co", 0, 1e6),
        MinutesOnSite = r.Number("minutes", 0, 1e6),
    };

    private static void Write(AreasSeen seen, BodyWriter w)
    {
        w.Date("day", seen.Day);
        w.Flag("found", seen.ReadAsFound ? true : null);
        w.Flag("left", seen.ReadAsLeft ? true : null);
        w.Number("tonnes", seen.TonnesSince);
        w.Number("months", seen.MonthsSince is { } months ? Math.Round(months, 2) : null);
        w.Objects("areas", seen.Areas, (a, o) =>
        {
            o.Text("area", EnumWords.Of(a.Parameter));
            o.Text("name", a.Name);
            Write("f", a.AsFound, o);
            Write("n", a.Now, o);
        });
    }

    private static void Write(string name, Interval interval, BodyWriter w)
    {
        foreach (var (end, value) in new[] { ("l", interval.Low), ("m", interval.Median), ("h", interval.High) })
            if (double.IsFinite(value)) w.Number(name + end, Math.Round(value, 5));
    }

    private static AreasSeen? ReadSeen(BodyReader r) => r.Date("day") is { } day
        ? new(day, [.. r.Objects("areas", ReadArea)], r.Flag("found") ?? false, r.Flag("left") ?? false, r.Number("tonnes", 0, 1000), r.Number("months", -1200, 12000))
        : null;

    private static RestrictionEstimate? ReadArea(BodyReader r) => EnumWords.Find<Parameter>(r.Text("area")) is { } parameter
        ? new(parameter, r.Text("name") ?? "", ReadInterval("f", r), ReadInterval("n", r))
        : null;

    private static Interval ReadInterval(string name, BodyReader r)
    {
        double Value(string end) => r.Number(name + end, -1e9, 1e9) ?? double.NaN;
        return new(Value("l"), Value("m"), Value("h"));
    }
}
