using Emberwright.Field.Entering;
using Emberwright.Field.Words;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Field.Tests.Words;

/// <summary>Numbers and dates as a region writes them, and numbers as its people type them.</summary>
public sealed class LocalTests : IDisposable
{
    // The region is one for the whole app.
    public void Dispose() => Local.In(Region.All[0]);

    // Consistent with the Unicode CLDR as remembered: the United States write the month first and a point, Germany the day first and a comma.
    [Theory]
    [InlineData("en-US", "November 25, 2026", "Nov 25, 2:05 PM", "12.5")]
    [InlineData("en-GB", "25 November 2026", "25 Nov, 14:05", "12.5")]
    [InlineData("de-DE", "25 November 2026", "25 Nov, 14:05", "12,5")]
    public void A_day_a_time_and_a_number(string tag, string day, string time, string number)
    {
        Local.In(Region.Of(tag));
        var at = new DateTimeOffset(2026, 11, 25, 14, 5, 0, TimeSpan.Zero);
        Assert.Equal(day, at.Local("d MMMM yyyy"));
        Assert.Equal(time, at.Local("d MMM, HH:mm"));
        Assert.Equal(number, Local.Number(12.5, "0.0"));
        Assert.Equal($"about {number} Pa.", Local.Signs("about 12.5 Pa."));
    }

    [Theory]
    [InlineData("en-US", "en-US", UnitSystem.Us)]
    [InlineData("en-CA", "en-CA", UnitSystem.Us)]
    [InlineData("de", "de-DE", UnitSystem.Si)]
    [InlineData("sv-FI", "sv-SE", UnitSystem.Si)]
    [InlineData("ja-JP", "en-US", UnitSystem.Us)]
    [InlineData(null, "en-US", UnitSystem.Us)]
    public void A_browser_s_tag_finds_the_region_nearest_to_it(string? tag, string found, UnitSystem units)
    {
        Assert.Equal(found, Region.Of(tag).Tag);
        Assert.Equal(units, Region.Of(tag).Units);
    }

    // Consistent with the Unicode CLDR as remembered: a comma is the decimal mark in German and parts thousands in English.
    [Theory]
    [InlineData("de-DE", "0,31 lb", "0.31 lb")]
    [InlineData("de-DE", "1,250 t", "1.250 t")]
    [InlineData("de-DE", "0.31 lb", "0.31 lb")]
    [InlineData("en-US", "0,31 lb", "0.31 lb")]
    [InlineData("en-US", "1,250 ft", "1,250 ft")]
    public void A_typed_comma_is_a_decimal_mark_unless_it_may_part_thousands(string tag, string typed, string read)
    {
        Local.In(Region.Of(tag));
        Assert.Equal(read, Local.Typed(typed));
    }

    [Fact]
    public void The_pad_shows_the_region_s_sign_and_keeps_the_journal_s()
    {
        Local.In(Region.Of("fr-FR"));
        var typed = Typed.From("-0,07");
        Assert.Equal("−0,07", typed.Shown);
        Assert.Equal("−0.07", typed.Text);
        Assert.Equal(-0.07, typed.Value);
        Assert.Equal("−0,", Typed.From("-0").Point().Shown);
        Assert.Equal(typed, Typed.From(typed.Shown));
    }
}
