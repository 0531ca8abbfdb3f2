using CsCheck;
using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Fire;

public class HeatContentTests
{
    private static readonly Gen<GasMix> AnyMix =
        from co2 in Gen.Double[0, 20]
        from water in Gen.Double[0, 20]
        from so2 in Gen.Double[0, 1]
        from n2 in Gen.Double[1, 80]
        from o2 in Gen.Double[0, 20]
        from ar in Gen.Double[0, 1]
        from co in Gen.Double[0, 1]
        select new GasMix(co2, water, so2, n2, o2, ar, co);

    [Fact]
    public void Heat_is_zero_at_25_C() =>
        AnyMix.Sample(mix => Assert.Equal(0, new HeatContent(mix).At(298.15), 1e-6));

    [Fact]
    public void Capacity_is_the_slope_of_heat() => Gen.Select(AnyMix, Gen.Double[100, 2500]).Sample((mix, kelvin) =>
    {
        var heat = new HeatContent(mix);
        heat.At(kelvin, out var capacity);

        Assert.Equal((heat.At(kelvin + 0.01) - heat.At(kelvin - 0.01)) / 0.02, capacity, 2e-3 * capacity);
    });

    [Fact]
    public void Heat_does_not_jump_where_tables_meet() => AnyMix.Sample(mix =>
    {
        var heat = new HeatContent(mix);
        foreach (var join in new[] { 500.0, 700, 1200, 1300, 1700 })
            Assert.Equal(heat.At(join), heat.At(Math.BitIncrement(join)), 1e-8 * heat.At(join));
    });

    [Fact]
    public void Temperature_comes_back_from_heat() => Gen.Select(AnyMix, Gen.Double[150, 2400]).Sample((mix, kelvin) =>
    {
        var heat = new HeatContent(mix);

        Assert.Equal(kelvin, heat.TemperatureK(heat.At(kelvin)), 1e-6 * kelvin);
    });

    [Fact]
    public void Evaluating_allocates_nothing()
    {
        var heat = new HeatContent(CombustionAir.DryMole);
        heat.At(400);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sum = 0.0;
        for (var i = 0; i < 1000; i++) sum += heat.At(300 + i, out var capacity) + capacity;

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(sum > 0);
    }
}
