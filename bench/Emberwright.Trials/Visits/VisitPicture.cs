using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace Emberwright.Trials.Visits;

/// <summary>Cost of the visits, policy by policy: the share of stoves dealt with at or below a cost.</summary>
internal static class VisitPicture
{
    private static readonly OxyColor[] Colors = [OxyColor.FromRgb(0xC2, 0x52, 0x1B), OxyColor.FromRgb(0x3F, 0x5B, 0x73), OxyColor.FromRgb(0xB8, 0xB0, 0xA6), OxyColor.FromRgb(0x5E, 0x8A, 0x8C)];
    private static readonly LineStyle[] Lines = [LineStyle.Solid, LineStyle.Dash, LineStyle.Dot, LineStyle.DashDot];

    /// <summary>Draws it as SVG.</summary>
    public static string Of(IReadOnlyList<VisitRow> rows)
    {
        var model = new PlotModel { Title = "Share of stoves dealt with, by cost of the visit", DefaultFont = "Arial", DefaultFontSize = 13, TitleFontSize = 15, TitleFontWeight = 500, Background = OxyColors.White };
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Minimum = 0, Maximum = 700, Title = "cost", MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = OxyColor.FromRgb(0xEE, 0xEA, 0xE4) });
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, AxisTitleDistance = 12, Minimum = 0, Maximum = 1, Title = "share cured, or rightly out of use", MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = OxyColor.FromRgb(0xEE, 0xEA, 0xE4) });
        model.Legends.Add(new Legend { LegendPosition = LegendPosition.RightBottom, LegendBackground = OxyColors.White, LegendPadding = 12, LegendSymbolLength = 26 });
        var policies = rows.SelectMany(r => r.Outcomes).Select(o => o.Policy).Distinct().ToArray();
        for (var p = 0; p < policies.Length; p++)
        {
            var line = new LineSeries { Title = policies[p] + "\u00a0\u00a0\u00a0", Color = Colors[p % Colors.Length], LineStyle = Lines[p % Lines.Length], StrokeThickness = 2 };
            var costs = rows.Select(r => r.Outcomes.First(o => o.Policy == policies[p])).Where(o => o.Cured || o.Stopped).Select(o => o.Cost).Order().ToArray();
            line.Points.Add(new DataPoint(0, 0));
            for (var k = 0; k < costs.Length; k++) line.Points.Add(new DataPoint(costs[k], (k + 1.0) / rows.Count));
            model.Series.Add(line);
        }

        return new SvgExporter { Width = 680, Height = 460, IsDocument = true }.ExportToString(model);
    }
}
