using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The readings: as found, healthy band with its confidence and origin, as left. Grouped by condition. A value out of
/// band carries its word in reverse.
/// </summary>
internal static class ReadingsTable
{
    /// <summary>Title and head; they stand again where the table goes on.</summary>
    public static IEnumerable<Strip> Head(ReportInput input, double measure, FigureType type)
    {
        var columns = new Widths(measure);
        var shared = Shared(input);
        yield return type.Heading(Say.Of("readings.readings"), measure);
        yield return new Strip(type.Row(1),
        [
            new Text(new(columns.Found, type.Baseline), Say.Of("common.as-found"), type.Fine, Anchor.End),
            new Text(new(columns.Healthy, type.Baseline), shared is { } share ? Say.Of("readings.healthy", Print.Percent(share)) : Say.Of("common.healthy"), type.Fine),
            new Text(new(columns.Origin, type.Baseline), Say.Of("readings.band-from"), type.Fine),
            new Text(new(columns.Left, type.Baseline), Say.Of("common.as-left"), type.Fine, Anchor.End),
        ], true);
    }

    private static double? Shared(ReportInput input)
    {
        var confidences = input.Readings.Where(r => r.Low is not null).Select(r => r.Confidence).Distinct().ToList();
        return confidences.Count == 1 ? confidences[0] : null;
    }

    /// <summary>The rows.</summary>
    public static IEnumerable<Strip> Rows(ReportInput input, double measure, FigureType type)
    {
        var columns = new Widths(measure);
        var shared = Shared(input);
        foreach (var group in input.Readings.GroupBy(r => r.Condition))
        {
            // A lone reading carries its condition itself.
            var alone = group.Count() == 1;
            if (!alone) yield return new Strip(type.Row(1), [new Line(new(0, 0), new(measure, 0), Print.Hairline), new Text(new(0, type.Baseline), group.Key, type.Strong)], true);
            foreach (var row in group)
                foreach (var strip in Row(alone ? row with { Name = $"{row.Name}, {Lower(row.Condition)}" } : row, columns, input.Units, shared is null, measure, type, alone ? 0 : 8))
                    yield return strip;
        }
    }

    private static IEnumerable<Strip> Row(ReadingRow row, Widths columns, UnitSystem system, bool ownConfidence, double measure, FigureType type, double indent)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new Line(new(0, 0), new(measure, 0), Print.Hairline));
        var lines = Words.Wrap(row.Name, columns.Name - indent, type.Text);
        for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(indent, type.Baseline + type.Line * i), lines[i], type.Text));
        Value(shapes, row, row.Found, row.FoundVerdict, columns.Found, system, type);
        Value(shapes, row, row.Left, row.LeftVerdict, columns.Left, system, type);
        var band = Band(row, system);
        if (ownConfidence && row is { Low: not null, Confidence: { } share }) band += $" ({Print.Percent(share)})";
        shapes.Add(new Text(new(columns.Healthy, type.Baseline), band, type.Text));
        if (row.Origin is not null) shapes.Add(new Text(new(columns.Origin, type.Baseline), row.Origin, type.Fine));
        yield return new Strip(type.Row(lines.Count), shapes.ToImmutable(), row.Explanation is not null);
        if (row.Explanation is { Length: > 0 } why)
            foreach (var s in Print.Paragraph(why, measure - 8, type.Fine, 8)) yield return s;
    }

    private static void Value(ImmutableArray<Shape>.Builder shapes, ReadingRow row, double? value, string? verdict, double x, UnitSystem system, FigureType type)
    {
        shapes.Add(new Text(new(x, type.Baseline), value is { } v ? Write(row, v, system) : "–", value is null ? type.Fine : type.Strong, Anchor.End));
        if (value is not null && verdict is { Length: > 0 }) shapes.AddRange(type.Flag(verdict, x + 5).Shapes);
    }

    /// <summary>A value with its unit, pressures with their sign.</summary>
    public static string Write(ReadingRow row, double value, UnitSystem system) =>
        QuantityFormat.Format(value, row.Measure, system, Step(row), plus: row.Measure == Measure.Pressure);

    // Pressures convert to a unit 249 times as large; the pascal's step keeps every digit that was read.
    private static double? Step(ReadingRow row) => row.Resolution ?? (row.Measure == Measure.Pressure ? 1 : null);

    private static string Lower(string words) => words.Length == 0 ? words : words[..1].ToLowerInvariant() + words[1..];

    private static string Band(ReadingRow row, UnitSystem system) => (row.Low, row.High) switch
    {
        ({ } low, { } high) => Say.Of("readings.to", Bare(row, low, system), Write(row, high, system)),
        ({ } low, null) => Say.Of("readings.at-least", Write(row, low, system)),
        (null, { } high) => Say.Of("readings.at-most", Write(row, high, system)),
        (null, null) => "–",
    };

    private static string Bare(ReadingRow row, double value, UnitSystem system)
    {
        var written = Write(row, value, system);
        var space = written.IndexOf(' ');
        return space < 0 ? written : written[..space];
    }

    private readonly record struct Widths(double Measure)
    {
        public double Name => Measure * 0.25;

        public double Found => Measure * 0.35;

        public double Healthy => Measure * 0.475;

        public double Origin => Measure * 0.7;

        public double Left => Measure * 0.89;
    }
}
