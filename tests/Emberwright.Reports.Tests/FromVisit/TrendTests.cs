using System.Collections.Immutable;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Reports.Tests.FromVisit;

public class TrendTests
{
    private static readonly ReportInput Service = Of("healthy-service");

    [Fact]
    public void What_was_left_last_time_stands_before_what_was_found_and_left_today()
    {
        var firebox = Service.Trends.Single(t => t.Name.StartsWith("Firebox, fan only", StringComparison.Ordinal));
        Assert.Equal([-27, -21, -26], firebox.Points.Select(p => p.Value));
        Assert.Equal([true, false, true], firebox.Points.Select(p => p.AsLeft));
        Assert.True(firebox.Points[0].On < firebox.Points[1].On);
    }

    [Fact]
    public void The_plot_is_drawn_and_says_its_days()
    {
        var text = ReadBack.All(ReportPdf.Render(Service, PageFormat.A4));
        Assert.Contains("Over the visits.", text);
        Assert.DoesNotContain("xception", text);
        Assert.Contains("21 Apr 2026", text);
    }

    [Fact]
    public void A_higher_value_stands_higher()
    {
        var trend = Service.Trends.Single(t => t.Name.StartsWith("Firebox, fan only", StringComparison.Ordinal));
        var marks = TrendPicture.Draw(trend, UnitSystem.Si, 240, "t").Shapes.OfType<Circle>().OrderBy(c => c.Centre.Y).ToArray();
        Assert.Equal(3, marks.Length);
        // −21 Pa, then −26, then −27 from top to bottom; the first visit stands left of today.
        Assert.True(marks[0].Centre.X > marks[2].Centre.X);
        Assert.Equal(marks[0].Centre.X, marks[1].Centre.X, 0.01);
        Assert.Equal(5.0, (marks[1].Centre.Y - marks[0].Centre.Y) / (marks[2].Centre.Y - marks[1].Centre.Y), 0.01);
    }

    [Fact]
    public void Without_a_past_there_is_no_trend() => Assert.Empty(Of("ash-passages-full").Trends);

    private static ReportInput Of(string name)
    {
        var visit = DemoVisits.Load(name);
        return VisitReport.Of(visit, DemoVisits.Concluded(visit), "0.1.0", UnitSystem.Si, _ => ImmutableArray<byte>.Empty);
    }
}
