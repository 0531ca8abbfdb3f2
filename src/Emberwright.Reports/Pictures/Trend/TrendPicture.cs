using System.Collections.Immutable;
using System.Globalization;

namespace Emberwright.Reports.Pictures.Trend;

/// <summary>One figure of one day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Value">The figure, in the unit of the picture.</param>
/// <param name="IsFound">True as found, before the work: drawn hollow.</param>
/// <param name="Low">Lower end of its interval; null without one.</param>
/// <param name="High">Upper end.</param>
public readonly record struct TrendMark(DateOnly Day, double Value, bool IsFound = false, double? Low = null, double? High = null);

/// <summary>A stretch of time that is foretold: four chances in five within.</summary>
/// <param name="Day">The day.</param>
/// <param name="Low">Lower end.</param>
/// <param name="Middle">Likeliest.</param>
/// <param name="High">Upper end.</param>
public readonly record struct TrendBand(DateOnly Day, double Low, double Middle, double High);

/// <summary>What a trend shows.</summary>
/// <param name="Title">What it is of, e.g. <c>Ash passages</c>.</param>
/// <param name="Unit">Unit of the figures.</param>
/// <param name="Decimals">Decimals of the figures.</param>
/// <param name="Marks">What was seen, in any order.</param>
/// <param name="Foretold">What is foretold, by day; empty without a forecast.</param>
/// <param name="Limit">A limit to draw; null without one.</param>
/// <param name="Today">Today, drawn as an upright; null leaves it out.</param>
public sealed record TrendInput(
    string Title, string Unit, int Decimals, ImmutableArray<TrendMark> Marks, ImmutableArray<TrendBand> Foretold = default, double? Limit = null, DateOnly? Today = null)
{
    /// <summary>The forecast, empty when there is none.</summary>
    public ImmutableArray<TrendBand> Band => Foretold.IsDefault ? [] : Foretold;
}

/// <summary>One figure over the years: hollow as found, full as left, the forecast as a ribbon, its limit as a line.</summary>
public static class TrendPicture
{
    private const double Left = 46;
    private const double Top = 26;
    private const double Plot = 110;
    private const double Least = 1e-6;

    /// <summary>Draws the trend; null when there is nothing to draw.</summary>
    /// <param name="input">What it shows.</param>
    /// <param name="id">Prefix of ids.</param>
    /// <param name="width">Width, picture units.</param>
    public static Scene? Draw(TrendInput input, string id, double width = 340)
    {
        ArgumentNullException.ThrowIfNull(input);
        var marks = input.Marks.Where(m => double.IsFinite(m.Value)).OrderBy(m => m.Day).ToArray();
        if (marks.Length + input.Band.Length == 0) return null;
        var days = marks.Select(m => m.Day).Concat(input.Band.Select(b => b.Day)).Concat(input.Today is { } t ? [t] : []).ToArray();
        var (first, last) = (days.Min().AddDays(-20), days.Max().AddDays(20));
        var values = marks.SelectMany(m => new[] { m.Value, m.Low ?? m.Value, m.High ?? m.Value }).Concat(input.Band.SelectMany(b => new[] { b.Low, b.High })).Concat(input.Limit is { } l ? [l] : []).ToArray();
        var ticks = Ticks.Around(Math.Min(0, values.Min()), Math.Max(values.Max(), Least), 3);
        var right = width - 10;
        double X(DateOnly day) => Left + (day.DayNumber - first.DayNumber) / (double)(last.DayNumber - first.DayNumber) * (right - Left);
        double Y(double value) => Top + Plot * (1 - (Math.Clamp(value, ticks.Low, ticks.High) - ticks.Low) / (ticks.High - ticks.Low));
        var shapes = new List<Shape> { new Text(new(0, 12), input.Title, Roles.Name), new Text(new(right, 12), input.Unit, Roles.AxisWord, Anchor.End) };
        foreach (var tick in ticks.Between(ticks.Low, ticks.High))
        {
            shapes.Add(new Line(new(Left, Y(tick)), new(right, Y(tick)), Roles.Grid));
            shapes.Add(new Text(new(Left - 6, Y(tick) + 4), Figures.Fixed(tick, ticks.Decimals), Roles.AxisWord, Anchor.End));
        }

        shapes.AddRange(Dates(first, last, X));
        if (input.Band.Length > 1)
        {
            shapes.Add(new Polygon([.. input.Band.Select(b => new Spot(X(b.Day), Y(b.High))), .. input.Band.Reverse().Select(b => new Spot(X(b.Day), Y(b.Low)))], new Role("foretold", Token.Band)));
            shapes.Add(new Polyline([.. input.Band.Select(b => new Spot(X(b.Day), Y(b.Middle)))], Roles.Supposed));
        }

        if (input.Limit is { } limit)
        {
            shapes.Add(new Line(new(Left, Y(limit)), new(right, Y(limit)), Roles.Limit));
            shapes.Add(new Text(new(Left + 4, Y(limit) + (Y(limit) < Top + 16 ? 14 : -5)), $"limit {Figures.Fixed(limit, input.Decimals)}", Roles.Word));
        }

        if (input.Today is { } today) shapes.Add(new Line(new(X(today), Top), new(X(today), Top + Plot), new Role("today", null, Token.Ink2, 1.5)));
        foreach (var mark in marks) shapes.AddRange(Mark(mark, input.Limit, X, Y));
        return new Scene(id, Box.Between(0, 0, width, Top + Plot + 22), $"{input.Title}, {input.Unit}", Describe(input, marks), [.. shapes]);
    }

    private static IEnumerable<Shape> Dates(DateOnly first, DateOnly last, Func<DateOnly, double> x)
    {
        var months = (last.Year - first.Year) * 12 + last.Month - first.Month;
        var step = months <= 8 ? 2 : months <= 18 ? 4 : months <= 60 ? 12 : 24;
        for (var day = new DateOnly(first.Year, 1, 1); day <= last; day = day.AddMonths(step))
        {
            if (day < first) continue;
            yield return new Line(new(x(day), Top + Plot), new(x(day), Top + Plot + 5), Roles.Axis);
            yield return new Text(new(x(day), Top + Plot + 18), day.ToString(day.Month == 1 ? "yyyy" : "MMM", CultureInfo.InvariantCulture), Roles.AxisWord, Anchor.Middle);
        }
    }

    private static IEnumerable<Shape> Mark(TrendMark mark, double? limit, Func<DateOnly, double> x, Func<double, double> y)
    {
        var at = new Spot(x(mark.Day), y(mark.Value));
        if (mark is { Low: { } low, High: { } high }) yield return new Line(new(at.X, y(low)), new(at.X, y(high)), new Role("span", null, Token.Ink3, 2));
        if (limit is { } most && mark.Value > most)
            yield return new Polygon([new(at.X, at.Y - 6), new(at.X + 6, at.Y), new(at.X, at.Y + 6), new(at.X - 6, at.Y)], mark.IsFound ? new Role("over", Token.Sheet, Token.Ember, 2.5) : Roles.Out);
        else yield return new Circle(at, 4.5, mark.IsFound ? Roles.InBefore : Roles.InNow);
    }

    private static string Describe(TrendInput input, TrendMark[] marks)
    {
        string F(double value) => $"{Figures.Fixed(value, input.Decimals)} {input.Unit}";
        var seen = marks.Select(m => $"{Day(m.Day)}: {F(m.Value)} {(m.IsFound ? "as found" : "as left")}.");
        var foretold = input.Band is [.., var end] ? [$"Foretold for {Day(end.Day)}: {F(end.Middle)}, between {F(end.Low)} and {F(end.High)}."] : Array.Empty<string>();
        return string.Join(' ', [.. seen, .. foretold, .. input.Limit is { } limit ? [$"Limit {F(limit)}."] : Array.Empty<string>()]);
    }

    private static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
