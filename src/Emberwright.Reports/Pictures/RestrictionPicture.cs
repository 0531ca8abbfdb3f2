using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures;

/// <summary>A restriction with its 90 % interval, fractions 0 (open) to 1 (shut).</summary>
/// <param name="Low">Lower end.</param>
/// <param name="Likely">Most likely.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Restriction(double Low, double Likely, double High)
{
    /// <summary>The trade's word for it (common practice, no source).</summary>
    public string Word => Likely switch { < 0.15 => Say.Of("common.open"), < 0.40 => Say.Of("restriction.fair"), < 0.70 => Say.Of("restriction.poor"), _ => Say.Of("restriction.shut") };
}

/// <summary>One area before and after the work.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Before">As found; null when not known.</param>
/// <param name="After">As left; null when not known.</param>
/// <param name="Limit">Where the stove would stop or waste fuel, fraction; null when not known.</param>
public sealed record AreaChange(string Name, Restriction? Before, Restriction? After, double? Limit = null);

/// <summary>
/// How blocked each area was: before and after on one axis, each area with its own limit as an upright.
/// </summary>
public static class RestrictionPicture
{
    private const double RowHeight = 34;

    /// <summary>Draws the areas.</summary>
    /// <param name="areas">At least one.</param>
    /// <param name="width">Width, picture units.</param>
    /// <param name="id">Prefix of ids.</param>
    /// <exception cref="ArgumentException">No areas, or fractions outside 0 … 1.</exception>
    public static Scene Draw(IReadOnlyList<AreaChange> areas, double width = 340, string id = "areas")
    {
        if (areas.Count == 0) throw new ArgumentException("areas is empty; the picture needs at least one.");
        foreach (var (name, r) in areas.SelectMany(a => new[] { (a.Name, a.Before), (a.Name, a.After) }))
            if (r is { } known && !(known.Low >= 0 && known.Low <= known.Likely && known.Likely <= known.High && known.High <= 1))
                throw new ArgumentException($"The restriction of '{name}' is {known.Low} … {known.Likely} … {known.High}; it must rise within 0 to 1.");

        var names = Math.Min(width * 0.45, areas.Max(a => Math.Max(Roles.Name.Width(a.Name), Roles.Word.Width(a.Name)))) + 14;
        var most = areas.Max(a => Math.Max(Math.Max(a.Before?.High ?? 0, a.After?.High ?? 0), a.Limit ?? 0));
        var ticks = Ticks.Around(0, Math.Max(0.4, Math.Min(1, most)) * 100, 4);
        var right = width - 16;
        double X(double fraction) => names + Math.Min(1, fraction) * 100 / ticks.High * (right - names);
        var bottom = 16 + RowHeight * areas.Count;
        var shapes = new List<Shape>();
        foreach (var tick in ticks.Between(0, ticks.High))
        {
            shapes.Add(new Line(new(X(tick / 100), 16), new(X(tick / 100), bottom), Roles.Grid));
            shapes.Add(new Text(new(X(tick / 100), 10), Figures.Fixed(tick, 0) + (tick >= ticks.High ? " %" : ""), Roles.AxisWord, Anchor.Middle));
        }

        for (var i = 0; i < areas.Count; i++) DrawArea(shapes, areas[i], 16 + RowHeight * i + 15, X, names, width);
        return new Scene(id, Box.Between(-1, -2, width, bottom + 2), Say.Of("common.how-blocked-each-part-was"), string.Join(" ", areas.Select(Describe)), [.. shapes]);
    }

    /// <summary>True when the area was past its limit before the work.</summary>
    public static bool IsPast(AreaChange area) => area is { Before: { } b, Limit: { } limit } && b.Likely > limit;

    private static void DrawArea(List<Shape> shapes, AreaChange area, double y, Func<double, double> x, double names, double width)
    {
        var past = IsPast(area);
        var lettering = past ? Roles.Name : Roles.Word;
        var lines = Words.Wrap(area.Name, names - 10, lettering);
        for (var i = 0; i < Math.Min(lines.Count, 2); i++)
            shapes.Add(new Text(new(0, y + 4 + 13 * (i - (Math.Min(lines.Count, 2) - 1) / 2.0)), lines[i], lettering));
        foreach (var r in new[] { area.Before, area.After })
            if (r is { } known) shapes.Add(new Line(new(x(known.Low), y), new(x(known.High), y), new Role("interval", null, Token.Rule, 5)));
        if (area is { Before: { } from, After: { } to }) shapes.Add(new Line(new(x(from.Likely), y), new(x(to.Likely), y), Roles.Axis));
        if (area.Limit is { } limit) shapes.Add(new Line(new(x(limit), y - 9), new(x(limit), y + 9), Roles.Limit));
        if (area.Before is { } before)
        {
            var at = new Spot(x(before.Likely), y);
            if (past)
            {
                shapes.Add(new Line(new(x(area.Limit!.Value), y), at, Roles.Plumb));
                shapes.Add(Marks.Diamond(at, 7));
                var (w, h) = Marks.TagSize(null, Say.Of("restriction.past-limit"));
                shapes.AddRange(Marks.Tag(new Box(Math.Min(at.X - w / 2, width - w - 1), y + 9, w, h), null, Say.Of("restriction.past-limit")));
            }
            else
            {
                shapes.Add(Marks.Dot(at, 5, full: false));
            }
        }

        if (area.After is { } after) shapes.Add(Marks.Dot(new(x(after.Likely), y), 5.5, full: true));
    }

    private static string Describe(AreaChange area)
    {
        static string Of(Restriction? r) => r is { } k ? $"{k.Word}, {Percent(k.Likely)} ({Figures.Fixed(k.Low * 100, 0)}–{Percent(k.High)})" : Say.Of("restriction.not-known");
        var limit = area.Limit is not { } l ? "" : IsPast(area) ? Say.Of("restriction.limit-past-its-limit", Percent(l)) : Say.Of("restriction.limit", Percent(l));
        return Say.Of("restriction.before-after", area.Name, Of(area.Before), Of(area.After), limit);
    }

    internal static string Percent(double fraction) => Figures.Fixed(fraction * 100, 0) + " %";
}
