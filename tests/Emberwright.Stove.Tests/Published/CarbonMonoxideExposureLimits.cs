using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Limits exactly as their authorities state them: US EPA 40 CFR 50.8; US OSHA 29 CFR 1910.1000; US NIOSH; WHO 2021; EN 50291-1
/// and UL 2034 alarm points (these two from memory). No tolerance, they are definitions.
/// </summary>
public class CarbonMonoxideExposureLimits
{
    [Theory]
    [InlineData("epa-8h", 9, 8 * 60)]
    [InlineData("epa-1h", 35, 60)]
    [InlineData("osha-8h", 50, 8 * 60)]
    [InlineData("niosh-8h", 35, 8 * 60)]
    [InlineData("niosh-ceiling", 200, 0)]
    [InlineData("en50291-30", 30, 120)]
    public void Levels_over_times(string id, double ppm, double minutes)
    {
        var limit = Of(id);

        Assert.Equal(ppm, limit.Ppm);
        Assert.Equal(TimeSpan.FromMinutes(minutes), limit.NotBefore);
    }

    [Theory]
    [InlineData("en50291-50", 50, 60, 90)]
    [InlineData("en50291-100", 100, 10, 40)]
    [InlineData("en50291-300", 300, 0, 3)]
    [InlineData("ul2034-70", 70, 60, 240)]
    [InlineData("ul2034-150", 150, 10, 50)]
    [InlineData("ul2034-400", 400, 4, 15)]
    public void Alarm_points(string id, double ppm, double from, double to)
    {
        var limit = Of(id);

        Assert.Equal(LimitKind.AlarmMustSound, limit.Kind);
        Assert.Equal(ppm, limit.Ppm);
        Assert.Equal(TimeSpan.FromMinutes(from), limit.NotBefore);
        Assert.Equal(TimeSpan.FromMinutes(to), limit.Within);
    }

    [Fact]
    public void World_health_organization_day()
    {
        var limit = Of("who-24h");

        Assert.Equal(4, limit.MgPerM3);
        Assert.Equal(TimeSpan.FromHours(24), limit.NotBefore);
        Assert.Equal(4, CarbonMonoxide.MgPerM3(limit.Ppm, 298.15, 101_325), 0.002);
    }

    private static CarbonMonoxideLimit Of(string id) => CarbonMonoxideLimits.Published.Single(limit => limit.Id == id);
}
