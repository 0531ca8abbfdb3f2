using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>The key to the marks: only those that occur. Lower left, where a healthy path never goes; else below.</summary>
internal static class ProfileKey
{
    private const double RowHeight = 22;
    private const double LineHeight = 14;

    /// <summary>In the plot, at a place that covers nothing; null when there is none.</summary>
    public static ImmutableArray<Shape>? Place(ProfileInput input, Columns columns, Placement room, double plotHeight)
    {
        var rows = Rows(input, 96);
        var height = rows.Sum(r => r.Height);
        var width = rows.Max(r => r.Width);
        foreach (var x in (double[])[columns.Room + 5, columns.Outdoors - width - 4])
            for (var y = plotHeight - height + 4; y >= 0; y -= 6)
            {
                var cost = 0.0;
                var at = y;
                foreach (var row in rows)
                {
                    cost += room.Cost(new Box(x - 2, at, row.Width + 4, row.Height));
                    at += row.Height;
                }

                if (cost == 0) return Draw(rows, x, y);
            }

        return null;
    }

    /// <summary>Under the ledger, as many side by side as fit.</summary>
    public static ImmutableArray<Shape> Below(ProfileInput input, double right, ref double low)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        double x = 0, y = low + 12;
        foreach (var row in Rows(input, 1000))
        {
            if (x > 0 && x + row.Width > right) (x, y) = (0, y + RowHeight);
            made.AddRange(Draw([row], x, y));
            x += row.Width + 18;
        }

        low = y + RowHeight - 4;
        return made.ToImmutable();
    }

    private static ImmutableArray<Shape> Draw(IEnumerable<Row> rows, double x, double y)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        foreach (var row in rows)
        {
            made.Add(new Group(row.Sign, x, y + 9));
            foreach (var (line, i) in row.Lines.Select((line, i) => (line, i)))
                made.Add(new Text(new(x + 24, y + 13 + i * LineHeight), line, Roles.Word));
            y += row.Height;
        }

        return made.ToImmutable();
    }

    private static List<Row> Rows(ProfileInput input, double measure)
    {
        var rows = new List<Row>();
        void Add(string words, params ImmutableArray<Shape> sign) => rows.Add(new(sign, [.. Words.Wrap(words, measure, Roles.Word)]));
        var when = input.Moment == Moment.Found ? Say.Of("common.as-found") : Say.Of("common.as-left");
        Add(Say.Of("profile.healthy-today"), new Rect(new(1, -5, 16, 9), Roles.Band));
        if (input.Stations.Any(s => s.LastPa is not null)) Add(input.LastCaption, Marks.EarlierBar(new(9, 0), 9));
        if (input.Stations.Any(s => s.ReadingPa is not null && !ProfileWords.IsOut(s))) Add(when + Say.Of("profile.in"), Marks.Dot(new(9, 0), 5.5, input.Moment == Moment.Left));
        if (input.Stations.Any(ProfileWords.IsOut)) Add(when + Say.Of("profile.out"), Marks.Diamond(new(9, 0), 7));
        if (input.PredictionCaption is { } caption && input.Stations.Any(s => s.PredictedPa is not null))
            Add(caption, new Line(new(0, 0), new(18, 0), Roles.Supposed));
        return rows;
    }

    private sealed record Row(ImmutableArray<Shape> Sign, ImmutableArray<string> Lines)
    {
        public double Width => 24 + Lines.Max(Roles.Word.Width);

        public double Height => RowHeight + (Lines.Length - 1) * LineHeight;
    }
}
