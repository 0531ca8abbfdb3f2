using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace Emberwright.Trials.Calibration;

/// <summary>The reliability diagram: what was stated against what was so, rung by rung.</summary>
internal static class ReliabilityPicture
{
    private static readonly OxyColor Ember = OxyColor.FromRgb(0xC2, 0x52, 0x1B);
    private static readonly OxyColor[] Greys = [OxyColor.FromRgb(0xB8, 0xB0, 0xA6), OxyColor.FromRgb(0x8F, 0x86, 0x7B), OxyColor.FromRgb(0x5E, 0x8A, 0x8C), OxyColor.FromRgb(0x3F, 0x5B, 0x73)];
    private static readonly MarkerType[] Marks = [MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Diamond, MarkerType.Circle];

    /// <summary>Draws it as SVG.</summary>
    public static string Of(IReadOnlyList<CalibrationRow> rows)
    {
        var model = new PlotModel { Title = "Stated probability of a fault, and how often it was there", DefaultFont = "Arial", DefaultFontSize = 13, TitleFontSize = 15, TitleFontWeight = 500, Background = OxyColors.White };
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Minimum = 0, Maximum = 1, Title = "stated", MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = OxyColor.FromRgb(0xEE, 0xEA, 0xE4) });
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, AxisTitleDistance = 12, Minimum = 0, Maximum = 1, Title = "was so", MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = OxyColor.FromRgb(0xEE, 0xEA, 0xE4) });
        model.Legends.Add(new Legend { LegendPosition = LegendPosition.LeftTop, LegendBackground = OxyColors.White, LegendPadding = 12, LegendSymbolLength = 26 });
        var even = new LineSeries { Color = OxyColors.Gray, LineStyle = LineStyle.Dash, Title = "as it should be" };
        even.Points.AddRange([new DataPoint(0, 0), new DataPoint(1, 1)]);
        model.Series.Add(even);
        var ordinary = rows.Where(r => r.Mismatch == 1).ToArray();
        foreach (var rung in Enum.GetValues<Rung>())
        {
            var color = rung == Rung.Electrical ? Ember : Greys[(int)rung];
            var line = new LineSeries { Title = rung switch { Rung.Complaint => "complaint", Rung.Answers => "+ answers", Rung.AsFound => "+ as found", Rung.ThreeState => "+ three-state test\u00a0\u00a0\u00a0", Rung.Electrical => "+ wiring" }, Color = color, MarkerType = Marks[(int)rung], MarkerSize = 4, MarkerFill = color };
            line.Points.AddRange(Reliability.Diagram(ordinary.SelectMany(r => Reliability.Marginals(r, r.Says.First(s => s.Rung == rung)))).Where(b => b.Count >= 10).Select(b => new DataPoint(b.Stated, b.So)));
            model.Series.Add(line);
        }

        return new SvgExporter { Width = 620, Height = 560, IsDocument = true }.ExportToString(model);
    }
}
