using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Timeline;

/// <summary>One event of the burn sequence: when it should come, and when it came. Minutes since the call for heat.</summary>
/// <param name="Id">Event's id; what a tap on it reports.</param>
/// <param name="Name">Its name, e.g. "fire proved".</param>
/// <param name="EarliestMin">Earliest computed, min; not negative.</param>
/// <param name="LikelyMin">Most likely, min.</param>
/// <param name="LatestMin">Latest computed, min.</param>
/// <param name="RealMin">When it came, min; null when it was not seen.</param>
/// <param name="Verdict">Word for a time outside; null lets the picture say early or late.</param>
public sealed record TimelineEvent(string Id, string Name, double EarliestMin, double LikelyMin, double LatestMin, double? RealMin = null, string? Verdict = null);

/// <summary>Everything the burn timeline shows.</summary>
/// <param name="Title">What it is, e.g. "Start, computed and seen".</param>
/// <param name="Events">Events in order; at least one.</param>
public sealed record TimelineInput(string Title, ImmutableArray<TimelineEvent> Events)
{
    /// <summary>Prefix of ids, unique on the page.</summary>
    public string Id { get; init; } = "timeline";
}

/// <summary>
/// The burn sequence: one row an event, the computed time as a band, the real one as a mark, all on one axis of minutes.
/// </summary>
public static class BurnTimeline
{
    private const double RowHeight = 30;

    /// <summary>Draws the rows.</summary>
    /// <param name="input">What to show.</param>
    /// <param name="width">Width of the picture, picture units.</param>
    /// <exception cref="ArgumentException">No events, or times that do not rise.</exception>
    public static Scene Draw(TimelineInput input, double width = 374)
    {
        if (input.Events.IsDefaultOrEmpty) throw new ArgumentException("Events is empty; a burn timeline needs at least one event.");
        foreach (var e in input.Events)
            if (!(e.EarliestMin >= 0 && e.EarliestMin <= e.LikelyMin && e.LikelyMin <= e.LatestMin && e.LatestMin < 100_000 && e.RealMin is null or >= 0 and < 100_000))
                throw new ArgumentException($"The times of '{e.Name}' are {e.EarliestMin} … {e.LikelyMin} … {e.LatestMin} min, seen {e.RealMin?.ToString() ?? "not"}; they must rise from 0.");

        var names = Math.Min(width * 0.4, input.Events.Max(e => Roles.Name.Width(e.Name))) + 14;
        var ticks = Ticks.Around(0, Math.Max(1, input.Events.Max(e => Math.Max(e.LatestMin, e.RealMin ?? 0))), 5);
        var right = width - 16 - 18;
        double X(double min) => names + min / ticks.High * (right - names);
        var lines = input.Events.Select(e => Words.Wrap(e.Name, names - 12, Roles.Name)).ToList();
        var shapes = new List<Shape>();
        var bottom = 18 + lines.Sum(Height);
        foreach (var tick in ticks.Between(0, ticks.High))
        {
            shapes.Add(new Line(new(X(tick), 16), new(X(tick), bottom), Roles.Grid));
            var words = Figures.Short(tick, ticks.Decimals) + (tick >= ticks.High - 1e-9 ? " min" : "");
            shapes.Add(new Text(new(X(tick), 10), words, Roles.AxisWord, Anchor.Middle));
        }

        var y = 18.0;
        foreach (var (e, i) in input.Events.Select((e, i) => (e, i)))
        {
            shapes.Add(DrawEvent(e, lines[i], y, Height(lines[i]), X, right));
            y += Height(lines[i]);
        }

        return new Scene(input.Id, Box.Between(-8, -6, width - 8, y + 6), input.Title, string.Join(" ", input.Events.Select(Describe)), [.. shapes]);
    }

    private static double Height(List<string> lines) => RowHeight + 14 * (lines.Count - 1);

    private static Group DrawEvent(TimelineEvent e, List<string> lines, double top, double height, Func<double, double> x, double right)
    {
        var y = top + height / 2;
        var made = new List<Shape>();
        for (var i = 0; i < lines.Count; i++) made.Add(new Text(new(0, y + 4 + 14 * (i - (lines.Count - 1) / 2.0)), lines[i], Roles.Name));
        made.Add(new Rect(Box.Between(x(e.EarliestMin) - 1, y - 6, x(e.LatestMin) + 1, y + 6), Roles.Band));
        made.Add(new Line(new(x(e.LikelyMin), y - 6), new(x(e.LikelyMin), y + 6), new Role("likely", null, Token.BandEdge, 2)));
        if (e.RealMin is { } real)
        {
            var at = new Spot(x(real), y);
            if (!IsOut(e))
            {
                made.Add(Marks.Dot(at, 5.5, full: true));
            }
            else
            {
                made.Add(new Line(new(x(real < e.EarliestMin ? e.EarliestMin : e.LatestMin), y), at, Roles.Plumb));
                made.Add(Marks.Diamond(at, 7));
                var (w, h) = Marks.TagSize(null, Verdict(e));
                var left = at.X + 11 + w <= right + 18 ? at.X + 11 : at.X - 11 - w;
                made.AddRange(Marks.Tag(new Box(left, y - h / 2, w, h), null, Verdict(e)));
            }
        }

        made.Add(new Rect(Box.Between(-8, top, right + 18, top + height), Roles.Hit));
        return new Group([.. made], Id: e.Id, Tap: e.Id, Title: Describe(e));
    }

    private static bool IsOut(TimelineEvent e) => e.RealMin < e.EarliestMin || e.RealMin > e.LatestMin;

    private static string Verdict(TimelineEvent e) => e.Verdict ?? (e.RealMin < e.EarliestMin ? "early" : "late");

    private static string Describe(TimelineEvent e) =>
        $"{e.Name}: computed {Figures.Short(e.EarliestMin, 1)} to {Figures.Short(e.LatestMin, 1)} min, most likely {Figures.Short(e.LikelyMin, 1)}, "
        + (e.RealMin is { } r ? $"seen at {Figures.Short(r, 1)}{(IsOut(e) ? ", " + Verdict(e) : "")}." : "not seen.");
}
