using Emberwright.Field.Entering;
using Xunit;

namespace Emberwright.Field.Tests.Entering;

/// <summary>Slips of the finger are asked about; a stove out of order is not.</summary>
public sealed class PlausibilityTests
{
    // A firebox that should read −0.104…−0.072 inWC. One inWC is 249.089 Pa (NIST SP 811).
    private const double Low = -0.104, High = -0.072;

    private static Plausibility? Firebox(double typed) => Plausibility.Of(typed, Low, High, "Pa", pa => pa / 249.089);

    [Theory]
    [InlineData(-0.9, -0.09)]
    [InlineData(-9, -0.09)]
    [InlineData(0.09, -0.09)]
    public void A_slipped_point_or_sign_is_asked_about_with_the_likely_number(double typed, double likely) =>
        Assert.Equal(likely, Firebox(typed)!.Likely, 12);

    [Fact]
    public void A_meter_on_pascal_is_asked_about() => Assert.Equal(-22 / 249.089, Firebox(-22)!.Likely, 12);

    [Theory]
    [InlineData(-0.09)]
    [InlineData(-0.03)]
    [InlineData(-0.15)]
    [InlineData(0.0)]
    public void A_number_that_a_faulty_stove_gives_is_taken_as_it_is(double typed) => Assert.Null(Firebox(typed));

    [Fact]
    public void A_number_that_no_slip_explains_is_taken_as_it_is() => Assert.Null(Plausibility.Of(700, 170, 195));
}
