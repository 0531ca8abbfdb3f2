using System.Globalization;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Emberwright.Reports.Pages;

/// <summary>One quantity over the visits: hollow as found, full as left, today's healthy band behind.</summary>
internal static class TrendPicture
{
    private const double Height = 116;

    public static Scene Draw(Trend trend, UnitSystem system, double width, string id)
    {
        var (unit, _) = MeasureUnits.Shown(trend.Measure, system);
        double In(double si) => MeasureUnits.Of(trend.Measure) == unit ? si : Quantity.Of(si, trend.Measure).In(unit);
        var model = new PlotModel { Background = OxyColors.Undefined, PlotAreaBorderThickness = new(0, 0, 0, 1), PlotAreaBorderColor = PlotContext.Colour(Token.Ink3), Padding = new(2, 6, 10, 2), DefaultFontSize = 10, TextColor = PlotContext.Colour(Token.Ink2) };
        var values = trend.Points.Select(p => In(p.Value)).Concat(new[] { trend.Low, trend.High }.OfType<double>().Select(In)).ToArray();
        var room = Math.Max((values.Max() - values.Min()) * 0.15, 1e-6);
        var (first, last) = (trend.Points.Min(p => p.On), trend.Points.Max(p => p.On));
        var span = Math.Max(1, last.DayNumber - first.DayNumber) * 0.08;
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Minimum = values.Min() - room, Maximum = values.Max() + room, TickStyle = TickStyle.Outside, TicklineColor = PlotContext.Colour(Token.Ink3), AxislineStyle = LineStyle.None, IntervalLength = 28 });
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Minimum = first.DayNumber - span, Maximum = last.DayNumber + span, IsAxisVisible = false });
        if (trend is { Low: { } low, High: { } high })
            model.Annotations.Add(new RectangleAnnotation { MinimumY = In(low), MaximumY = In(high), MinimumX = first.DayNumber - span, MaximumX = last.DayNumber + span, Fill = PlotContext.Colour(Token.Band), Layer = AnnotationLayer.BelowSeries });
        var line = new LineSeries { Color = PlotContext.Colour(Token.Ink3), StrokeThickness = 1 };
        line.Points.AddRange(trend.Points.Select(p => new DataPoint(p.On.DayNumber, In(p.Value))));
        model.Series.Add(line);
        model.Series.Add(Marks(trend, In, left: false));
        model.Series.Add(Marks(trend, In, left: true));
        var context = new PlotContext();
        ((IPlotModel)model).Update(true);
        ((IPlotModel)model).Render(context, new OxyRect(0, 0, width, Height));
        var said = string.Join("; ", trend.Points.Select(p => $"{Day(p.On)} {(p.AsLeft ? "left" : "found")} {QuantityFormat.Format(p.Value, trend.Measure, system)}"));
        return new Scene(id, new Box(0, 0, width, Height + 16), trend.Name, said + ".",
        [
            .. context.Shapes,
            new Text(new(40, Height + 12), Day(first), new Lettering(10)),
            new Text(new(width - 10, Height + 12), Day(last), new Lettering(10), Anchor.End),
        ]);
    }

    private static ScatterSeries Marks(Trend trend, Func<double, double> value, bool left)
    {
        var marks = new ScatterSeries
        {
            MarkerType = MarkerType.Circle,
            MarkerSize = 4.5,
            MarkerFill = PlotContext.Colour(left ? Token.Ink : Token.Sheet),
            MarkerStroke = PlotContext.Colour(left ? Token.Sheet : Token.Ink),
            MarkerStrokeThickness = left ? 1 : 1.75,
            BinSize = 0,
        };
        marks.Points.AddRange(trend.Points.Where(p => p.AsLeft == left).Select(p => new ScatterPoint(p.On.DayNumber, value(p.Value))));
        return marks;
    }

    private static string Day(DateOnly day) => Say.ShortDay(day);
}
