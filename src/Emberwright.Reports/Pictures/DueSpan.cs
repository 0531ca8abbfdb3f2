using System.Globalization;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// A date with its interval on an axis of months: when the stove is due, most likely and at the latest.
/// </summary>
public static class DueSpan
{
    /// <summary>Draws the axis.</summary>
    /// <param name="from">Earliest date of the interval.</param>
    /// <param name="likely">Most likely date.</param>
    /// <param name="to">Latest date of the interval.</param>
    /// <param name="width">Width, picture units.</param>
    /// <param name="id">Prefix of ids.</param>
    /// <exception cref="ArgumentException">The dates do not rise.</exception>
    public static Scene Draw(DateOnly from, DateOnly likely, DateOnly to, double width = 340, string id = "due")
    {
        if (from > likely || likely > to) throw new ArgumentException($"The dates are {from:O}, {likely:O}, {to:O}; they must rise from earliest to latest.");
        var first = new DateOnly(from.Year, from.Month, 1);
        var last = new DateOnly(to.Year, to.Month, 1).AddMonths(1);
        var months = (last.Year - first.Year) * 12 + last.Month - first.Month;
        var step = months <= 6 ? 1 : months <= 18 ? 3 : 12;
        double X(DateOnly d) => 6 + (d.DayNumber - first.DayNumber) / (double)(last.DayNumber - first.DayNumber) * (width - 12);
        var shapes = new List<Shape>
        {
            new Line(new(6, 10), new(width - 6, 10), new Role("grid", null, Token.Rule, 1)),
            new Line(new(X(from), 10), new(X(to), 10), new Role("span", null, Token.Ink3, 4)),
            new Circle(new(X(likely), 10), 5, new Role("due", Token.Sheet, Token.Ink, 2.5)),
        };
        for (var m = first; m < last; m = m.AddMonths(step))
        {
            shapes.Add(new Line(new(X(m), 7), new(X(m), 13), Roles.Axis));
            shapes.Add(new Text(new(X(m), 30), months > 12 && m.Month == 1 || step == 12 ? m.Year.ToString(CultureInfo.InvariantCulture) : Say.ShortMonth(m.Month), Roles.Word));
        }

        return new Scene(id, Box.Between(0, 0, width, 36), Say.Of("due.when-it-is-due"),
            Say.Of("due.most-likely-between-and", Day(likely), Day(from), Day(to)), [.. shapes]);
    }

    private static string Day(DateOnly d) => Say.Day(d);
}
