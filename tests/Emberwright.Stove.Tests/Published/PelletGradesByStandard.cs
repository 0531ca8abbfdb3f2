using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// ISO 17225-2: A1 moisture ≤ 10 %, ash ≤ 0.7 % dry, net heating value ≥ 4.6 kWh/kg, bulk density ≥ 600 kg/m³, fines ≤ 1 %.
/// A2 and B, durability, nitrogen, sulfur and chlorine are from memory of the edition of 2021 and are not tested as published.
/// </summary>
public class PelletGradesByStandard
{
    [Fact]
    public void Limits_of_A1()
    {
        Assert.Equal(0.10, PelletGrade.A1.MoistureMost);
        Assert.Equal(0.007, PelletGrade.A1.AshMost);
        Assert.Equal(4.6 * 3.6e6, PelletGrade.A1.NetLeastJPerKg, 1e-6);
        Assert.Equal(600, PelletGrade.A1.BulkDensityLeast);
        Assert.Equal(0.01, PelletGrade.A1.FinesMost);
    }

    /// <summary>The standard's own range: fuel of that grade at that moisture must reach its heating value.</summary>
    [Theory]
    [InlineData("pellets-a1")]
    [InlineData("pellets-a2")]
    [InlineData("pellets-b")]
    public void Typical_fuels_lie_within_their_grade(string id)
    {
        var fuel = Fuels.Named(id);
        var sample = new PelletSample(fuel.Moisture, fuel.Dry.Ash, HeatingValue.Of(fuel).NetJPerKg, Nitrogen: fuel.Dry.Nitrogen, Sulfur: fuel.Dry.Sulfur);

        Assert.Equal(fuel.Name, "wood pellets, grade " + PelletGrade.BestFor(sample)?.Name);
    }

    [Fact]
    public void Damp_pellets_break_every_grade_by_moisture()
    {
        var fuel = Fuels.PelletsWet;

        Assert.Null(PelletGrade.BestFor(new PelletSample(fuel.Moisture)));
        Assert.Contains(PelletGrade.A1.Breaches(new PelletSample(fuel.Moisture)), breach => breach.Property == "moisture");
    }

    /// <summary>3 to 7 kg of ash per tonne of premium pellets: common practice, no source; it is A1's ash limit.</summary>
    [Fact]
    public void Ash_of_a_tonne() => Assert.InRange(FuelRate.ResidueKgPerTonne(Fuels.PelletsA1), 3, 7);
}
